package wayside.sizing.solar.array;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wayside.sizing.solar.plane.Extraterrestrial;
import wayside.sizing.solar.plane.Hdkr;
import wayside.sizing.solar.plane.IncidenceModifier;
import wayside.sizing.solar.plane.Isotropic;
import wayside.sizing.solar.plane.Perez;
import wayside.sizing.solar.plane.Plane;
import wayside.sizing.solar.plane.SunGeometry;
import wayside.sizing.solar.plane.Transposition;
import wayside.sizing.solar.sky.Erbs;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/**
 * A second opinion on the hourly chain: figures made with pvlib 0.13.1 by the script beside them, twelve places, four seasons,
 * two planes. Its sun comes from the NREL SPA, ours here from Spencer's short forms.
 */
class SecondOpinionTest {
    private record Hour(List<String> cells) {
        double number(int column) {
            return Double.parseDouble(cells.get(column));
        }

        String day() {
            return String.join(" ", cells.get(0), cells.get(3), cells.get(5), cells.get(6));
        }

        double phi() {
            return Math.toRadians(number(1));
        }

        int n() {
            return LocalDate.parse(cells.get(3)).getDayOfYear();
        }

        /** Middle of the hour of UTC, as an hour angle. */
        double omega() {
            double hours = number(4) + 0.5 + number(2) / 15 - 12;
            return Math.IEEEremainder(Math.PI / 12 * hours + SunGeometry.equationOfTime(n()), 2 * Math.PI);
        }

        double delta() {
            return SunGeometry.spencerDeclination(n());
        }

        double cosZenith() {
            return SunGeometry.cosZenith(phi(), delta(), omega());
        }

        Plane plane() {
            return Plane.of(number(5), number(6));
        }

        /** Cosine of incidence from the other's own sun. */
        double cosIncidenceOfTheirSun() {
            double sin = Math.sin(Math.toRadians(number(7)));
            double azimuth = Math.toRadians(number(8));
            return plane().eastPart() * sin * Math.sin(azimuth)
                    + plane().northPart() * sin * Math.cos(azimuth)
                    + plane().cosTilt() * Math.cos(Math.toRadians(number(7)));
        }
    }

    private static List<Hour> hours() throws IOException {
        try (InputStream stream =
                        SecondOpinionTest.class.getResourceAsStream("/wayside/sizing/solar/pvlib/hourly_chains.csv");
                BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .skip(2)
                    .map(line -> new Hour(List.of(line.split(",", -1))))
                    .toList();
        }
    }

    // Spencer's series knows no leap cycle and no hour: at most a day and three quarters of the sun's 0.4 degree a day.
    @Test
    void theSunStandsWhereTheOtherSaysToADaysMotion() throws IOException {
        assertThat(hours()).hasSizeGreaterThan(900);
        for (Hour hour : hours()) {
            double zenith = Math.toDegrees(Math.acos(hour.cosZenith()));
            assertThat(zenith).as(hour.day()).isCloseTo(hour.number(7), within(0.7));
            double azimuth = Math.toDegrees(SunGeometry.azimuth(hour.phi(), hour.delta(), hour.omega()));
            double apart = Math.abs(Math.IEEEremainder(azimuth - hour.number(8), 360));
            assertThat(apart * Math.sin(Math.toRadians(zenith))).as(hour.day()).isLessThan(0.7);
        }
    }

    // With the other's own sun the formulas must agree but for rounding, and for Reindl's f, in which pvlib divides by
    // global and we by beam plus diffuse.
    @Test
    void withTheSameSunTheFormulasAgree() throws IOException {
        for (Hour hour : hours()) {
            double cosZ = Math.cos(Math.toRadians(hour.number(7)));
            double normal = Extraterrestrial.spencerNormalWm2(hour.n());
            double ghi = hour.number(9);
            double dhi = hour.number(10);
            assertThat(Erbs.hourly(ghi / (normal * cosZ)) * ghi).as(hour.day()).isCloseTo(dhi, within(0.003 * dhi));
            double cosI = hour.cosIncidenceOfTheirSun();
            double beam = ghi - dhi;
            assertThat(plane(Isotropic.MODEL, hour, beam, dhi, normal, cosZ, cosI))
                    .isCloseTo(hour.number(11), within(0.05));
            assertThat(plane(Hdkr.MODEL, hour, beam, dhi, normal, cosZ, cosI))
                    .as(hour.day())
                    .isCloseTo(hour.number(12), within(0.2));
            assertThat(plane(Perez.MODEL, hour, beam, dhi, normal, cosZ, cosI))
                    .as(hour.day())
                    .isCloseTo(hour.number(13), within(0.2));
            assertThat(IncidenceModifier.fresnel(cosI)).isCloseTo(hour.number(14), within(1e-4));
            double rise = CellTemperature.riseKPerWm2(
                            CellTemperature.INSULATED_BACK, Derived.given("wind", 1, Unit.METRE_PER_SECOND, "/test"))
                    .value();
            double cell = CellTemperature.cellC(20, hour.number(12), rise);
            assertThat(cell).isCloseTo(hour.number(15), within(0.001));
            assertThat(ArrayOutput.powerW(100, hour.number(12), cell, -0.004, 1))
                    .isCloseTo(hour.number(16), within(0.001));
        }
    }

    private static double plane(
            Transposition model, Hour hour, double beam, double dhi, double normal, double cosZ, double cosI) {
        return model.planeWm2(beam, dhi, normal, cosZ, cosI, hour.plane(), 0.2);
    }

    // With our own sun the day's energy agrees: in the mean to 0.3 %, on each day to the 0.4 degree of declination
    // that a day at the equinox is worth, up to 3 % on a panel that faces a low western sun at 64 north.
    @Test
    void withOurOwnSunTheDaysEnergyAgrees() throws IOException {
        Map<String, double[]> days = new HashMap<>();
        for (Hour hour : hours()) {
            double normal = Extraterrestrial.spencerNormalWm2(hour.n());
            double cosI = SunGeometry.cosIncidence(hour.phi(), hour.delta(), hour.omega(), hour.plane());
            double ghi = hour.number(9);
            double dhi = ghi * Erbs.hourly(ghi / (normal * hour.cosZenith()));
            double ours = plane(Hdkr.MODEL, hour, ghi - dhi, dhi, normal, hour.cosZenith(), cosI);
            double[] sums = days.computeIfAbsent(hour.day(), key -> new double[2]);
            sums[0] += ours;
            sums[1] += hour.number(12);
        }
        List<Double> ratios = new ArrayList<>();
        days.forEach((day, sums) -> {
            assertThat(sums[0] / sums[1]).as(day).isCloseTo(1, within(0.03));
            ratios.add(sums[0] / sums[1]);
        });
        assertThat(ratios).hasSize(94);
        assertThat(ratios.stream().mapToDouble(r -> r).average().orElseThrow()).isCloseTo(1, within(0.003));
    }
}
