package wayside.sizing.solar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sky;
import wayside.sizing.brief.Stay;
import wayside.sizing.solar.plane.Hdkr;
import wayside.sizing.solar.plane.Isotropic;
import wayside.sizing.solar.plane.Perez;
import wayside.sizing.solar.plane.Plane;
import wayside.sizing.solar.plane.SolarDay;
import wayside.sizing.solar.plane.SunGeometry;
import wayside.sizing.solar.plane.Transposition;
import wayside.sizing.solar.sky.Erbs;

/** What must hold for every place, month and panel. */
class SolarLawsTest {
    private static SolarMonth month(Stay stay, PanelMount panel) {
        return SolarMonth.of(stay, 0, panel);
    }

    @Property(tries = 500)
    void nothingOnTheGlobeIsNaNOrNegative(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @DoubleRange(min = -180, max = 180) double longitude,
            @ForAll @IntRange(min = 1, max = 12) int month,
            @ForAll @DoubleRange(min = 0, max = 90) double tilt,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth) {
        SolarMonth solar = month(Stay.of(Place.of(latitude, longitude), month, 1), PanelMount.of(tilt, azimuth, 0.1));
        // A Quantity refuses what isn't finite, so each of these being here is half the law.
        assertThat(solar.horizontalKwhM2().value()).isBetween(0.0, 12.0);
        assertThat(solar.planeKwhM2().value()).isBetween(0.0, 16.0);
        assertThat(solar.yieldWhPerW().value())
                .isBetween(0.0, solar.planeKwhM2().value());
        assertThat(solar.sky().clearness().value()).isBetween(0.0, 0.85);
        assertThat(solar.sky().dailySwingK().value()).isBetween(1.0, 18.0);
        assertThat(solar.cellTemperatureC().value())
                .isGreaterThanOrEqualTo(solar.sky().meanC().value() - 9);
    }

    @Property(tries = 200)
    void aFlatPanelDoesNotCareWhereItFaces(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @IntRange(min = 1, max = 12) int month,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth) {
        Stay stay = Stay.of(Place.of(latitude, 20), month, 1);
        SolarMonth turned = month(stay, PanelMount.of(0, azimuth, 0));
        SolarMonth south = month(stay, PanelMount.of(0, 180, 0));
        assertThat(turned.planeKwhM2().value())
                .isEqualTo(turned.horizontalKwhM2().value());
        assertThat(turned.yieldWhPerW().value()).isCloseTo(south.yieldWhPerW().value(), within(1e-12));
    }

    /** Of roof pitches. A wall that the sun stands behind lives on diffuse light, and a clear sky has less of that. */
    @Property(tries = 200)
    void moreClearnessNeverBringsLess(
            @ForAll @DoubleRange(min = -66, max = 66) double latitude,
            @ForAll @IntRange(min = 1, max = 12) int month,
            @ForAll @DoubleRange(min = 0, max = 30) double tilt,
            @ForAll @DoubleRange(min = 0, max = 0.75) double clearness) {
        Stay stay = Stay.of(Place.of(latitude, 20), month, 1).at(new Ambient(10, 8));
        PanelMount panel =
                new PanelMount(At.ROOT, OptionalDouble.of(tilt), OptionalDouble.empty(), OptionalDouble.of(0));
        double less = month(stay.under(new Sky.Clearness(clearness)), panel)
                .planeKwhM2()
                .value();
        double more = month(stay.under(new Sky.Clearness(clearness + 0.02)), panel)
                .planeKwhM2()
                .value();
        assertThat(more).isGreaterThanOrEqualTo(less);
    }

    /** Six months on, the other hemisphere has the same sun, but for the distance to it and the date's declination. */
    @Property(tries = 100)
    void hemispheresMirrorEachOther(
            @ForAll @DoubleRange(min = 0, max = 60) double latitude,
            @ForAll @DoubleRange(min = 0, max = 1.4) double tilt,
            @ForAll @DoubleRange(min = -0.4, max = 0.4) double delta) {
        double tiltDegrees = Math.toDegrees(tilt);
        for (int hour = 0; hour < 24; hour++) {
            double omega = SunGeometry.hourAngle(hour);
            double north = SunGeometry.cosIncidence(Math.toRadians(latitude), delta, omega, Plane.of(tiltDegrees, 180));
            double south = SunGeometry.cosIncidence(Math.toRadians(-latitude), -delta, omega, Plane.of(tiltDegrees, 0));
            assertThat(north).isCloseTo(south, within(1e-12));
        }
    }

    @Property(tries = 300)
    void nightGivesNothingAndTheDaySumsToItself(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @IntRange(min = 1, max = 366) int dayOfYear,
            @ForAll @DoubleRange(min = 0, max = 0.9) double clearness,
            @ForAll @DoubleRange(min = 0, max = 90) double tilt) {
        SolarDay day = SolarDay.of(latitude, dayOfYear, Plane.of(tilt, 180));
        double global = 1000 * clearness * day.extraterrestrialKwhM2();
        double diffuse = global * Erbs.daily(clearness, day.sunsetHourAngle());
        double sum = 0;
        for (int hour = 0; hour < 24; hour++) {
            double g = global * day.globalShare(hour);
            double d = diffuse * day.diffuseShare(hour);
            sum += g;
            for (Transposition model : new Transposition[] {Hdkr.MODEL, Isotropic.MODEL, Perez.MODEL}) {
                double plane = day.planeWm2(hour, g, d, model, 0.2);
                double entering = day.enteringWm2(hour, g, d, model, 0.2);
                assertThat(plane).isGreaterThanOrEqualTo(0);
                assertThat(entering).isBetween(0.0, plane * (1 + 1e-9) + 1e-9);
                if (g == 0) {
                    assertThat(plane).isZero();
                }
            }
        }
        assertThat(sum).isCloseTo(global, within(1e-9 * Math.max(1, global)));
    }
}
