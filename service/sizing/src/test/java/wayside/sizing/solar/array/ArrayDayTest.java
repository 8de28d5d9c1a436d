package wayside.sizing.solar.array;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.solar.plane.Hdkr;
import wayside.sizing.solar.plane.SolarDay;
import wayside.sizing.solar.sky.Erbs;
import wayside.sizing.trace.Unit;

/** The multiplied-out hours against the calculators whose own tests name their sources. */
class ArrayDayTest {
    @Property(tries = 500)
    void yieldsWhatTheCalculatorsYieldOneAfterAnother(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @IntRange(min = 1, max = 366) int dayOfYear,
            @ForAll @DoubleRange(min = 0.01, max = 0.9) double clearness,
            @ForAll @DoubleRange(min = 0, max = 90) double tilt,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth,
            @ForAll @DoubleRange(min = -30, max = 45) double airC,
            @ForAll @DoubleRange(min = -20, max = 20) double warmerK) {
        for (double tiltOrFlat : new double[] {tilt, 0}) {
            ArrayModel array = ArrayModel.of(PanelMount.of(tiltOrFlat, azimuth, 0.1), latitude);
            SolarDay day = SolarDay.of(latitude, dayOfYear, array.position().plane());
            double globalWh = 1000 * clearness * day.extraterrestrialKwhM2();
            double[] yield = new double[2 * Unit.HOURS_PER_DAY];
            Arrays.fill(yield, 7);
            new ArrayDay(day, array, hourly(airC))
                    .fill(clearness, globalWh, warmerK, even(), yield, Unit.HOURS_PER_DAY);
            for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
                double plain = plain(day, array, hour, clearness, globalWh, hourly(airC)[hour] + warmerK);
                assertThat(yield[Unit.HOURS_PER_DAY + hour]).isCloseTo(plain, within(1e-12 * plain + 1e-15));
                assertThat(yield[hour]).isEqualTo(7);
            }
        }
    }

    // The hours of a rough day have the light of the smooth one; a yield without heat is in proportion to it.
    @Property(tries = 200)
    void aRoughDayKeepsItsLight(
            @ForAll @DoubleRange(min = -60, max = 60) double latitude,
            @ForAll @IntRange(min = 1, max = 366) int dayOfYear,
            @ForAll @DoubleRange(min = 0.01, max = 0.8) double clearness,
            @ForAll @DoubleRange(min = 0.3, max = 3) double morning) {
        ArrayModel array = ArrayModel.of(PanelMount.of(0, 0, 0), latitude);
        SolarDay day = SolarDay.of(latitude, dayOfYear, array.position().plane());
        double[] rough = even();
        Arrays.fill(rough, 0, 12, morning);
        double light = 0;
        for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
            light += new ArrayDay(day, array, hourly(20)).globalWh(1, rough, hour);
        }
        assertThat(light).isCloseTo(day.extraterrestrialKwhM2() > 0 ? 1 : 0, within(1e-12));
    }

    private static double[] even() {
        double[] even = new double[Unit.HOURS_PER_DAY];
        Arrays.fill(even, 1);
        return even;
    }

    private static double plain(SolarDay day, ArrayModel array, int hour, double k, double globalWh, double airC) {
        double global = globalWh * day.globalShare(hour);
        double diffuse = globalWh * Erbs.daily(k, day.sunsetHourAngle()) * day.diffuseShare(hour);
        double albedo = array.albedo().value();
        double plane = day.planeWm2(hour, global, diffuse, Hdkr.MODEL, albedo);
        double entering = day.enteringWm2(hour, global, diffuse, Hdkr.MODEL, albedo);
        double cellC = CellTemperature.cellC(airC, plane, array.riseKPerWm2().value());
        double left = array.lossFactor().value() * array.controllerEfficiency().value();
        return ArrayOutput.powerW(1, entering, cellC, array.powerCoefficient().value(), left);
    }

    private static double[] hourly(double airC) {
        double[] hours = new double[Unit.HOURS_PER_DAY];
        for (int hour = 0; hour < hours.length; hour++) {
            hours[hour] = airC + hour / 4.0;
        }
        return hours;
    }
}
