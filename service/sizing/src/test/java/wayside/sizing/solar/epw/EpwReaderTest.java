package wayside.sizing.solar.epw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.solar.plane.Hdkr;
import wayside.sizing.solar.plane.Plane;

/** The open weather file format, on an invented year. Its own hours are replayed, its months are its means. */
class EpwReaderTest {
    private static final List<String> YEAR = Collections.unmodifiableList(SyntheticYear.lines(0.5, false));

    private static TypicalYear read(List<String> lines) {
        return EpwReader.read(lines.iterator());
    }

    private static List<String> with(int line, String text) {
        List<String> lines = new ArrayList<>(YEAR);
        lines.set(line - 1, text);
        return lines;
    }

    // Source: U.S. Department of Energy, EnergyPlus Auxiliary Programs, weather file format: fields N1 to N4 of
    // LOCATION, and of a record N6 dry bulb, N13 global horizontal, N15 diffuse horizontal.
    @Test
    void readsThePlaceAndTheHours() {
        TypicalYear year = read(YEAR);
        assertThat(year.place().latitude()).isEqualTo(47);
        assertThat(year.place().longitude()).isEqualTo(15);
        assertThat(year.place().elevationM()).hasValue(400);
        int noonOfMidsummer = 24 * 171 + 12;
        // Half of 1322 W/m2 times cos z 0.911.
        assertThat(year.globalWm2(noonOfMidsummer)).isCloseTo(602, within(2.0));
        assertThat(year.diffuseWm2(noonOfMidsummer)).isCloseTo(0.4 * year.globalWm2(noonOfMidsummer), within(0.001));
        assertThat(year.airC(14)).isEqualTo(15);
        assertThat(year.globalWm2(0)).isZero();
    }

    @Test
    void aYearWithoutSunOrInKilowattHoursIsRefused() {
        // The sun rises everywhere at some time of the year, at the poles too.
        assertThatThrownBy(() -> read(SyntheticYear.lines(0, false)))
                .hasMessageStartingWith("Line 8768: global horizontal radiation (cell 14) must be in Wh/m2")
                .hasMessageEndingWith("received 0.0000 of it");
        assertThatThrownBy(() -> read(SyntheticYear.lines(0.5 / 1000, false)))
                .hasMessageEndingWith("received 0.0005 of it");
        assertThat(read(SyntheticYear.lines(0.1, false)).clearness()).isCloseTo(0.1, within(0.001));
    }

    @Test
    void monthsAreTheMeansThatWereWritten() {
        TypicalYear year = read(YEAR);
        for (int month = 1; month <= 12; month++) {
            TypicalMonth means = TypicalMonth.of(year, month);
            // Hour middles stand for hours: the sum over a day misses the integral by half a per cent in winter.
            assertThat(means.clearness()).isCloseTo(0.5, within(0.005));
            assertThat(means.clearnessSpread()).isLessThan(0.005);
            assertThat(means.meanC()).isCloseTo(10, within(1e-9));
            assertThat(means.dailySwingK()).isCloseTo(10, within(0.11));
        }
    }

    @Test
    void flatIsTheFilesOwnGlobalAndNightIsDark() {
        TypicalYear year = read(YEAR);
        YearOnPlane flat = YearOnPlane.of(year, Plane.of(0, 0), Hdkr.MODEL, 0.2);
        YearOnPlane south = YearOnPlane.of(year, Plane.of(60, 180), Hdkr.MODEL, 0.2);
        double winterFlat = 0;
        double winterSouth = 0;
        for (int hour = 0; hour < EpwReader.HOURS; hour++) {
            assertThat(flat.planeWm2(hour)).isEqualTo(year.globalWm2(hour));
            assertThat(flat.enteringWm2(hour)).isLessThanOrEqualTo(year.globalWm2(hour));
            assertThat(south.planeWm2(hour)).isNotNegative();
            if (year.globalWm2(hour) == 0) {
                assertThat(south.planeWm2(hour)).isZero();
            }
            if (hour < 24 * 31) {
                winterFlat += flat.planeWm2(hour);
                winterSouth += south.planeWm2(hour);
            }
        }
        assertThat(winterSouth).isGreaterThan(1.6 * winterFlat);
    }

    @Test
    void aLeapDayIsPassedOver() {
        TypicalYear leap = read(SyntheticYear.lines(0.5, true));
        assertThat(leap.globalWm2(24 * 59 + 12)).isEqualTo(read(YEAR).globalWm2(24 * 59 + 12));
    }

    @Test
    void missingDiffuseIsEstimated() {
        List<String> lines = YEAR.stream()
                .map(line -> {
                    String[] cells = line.split(",", -1);
                    if (cells.length > 20) {
                        cells[15] = "9999";
                    }
                    return String.join(",", cells);
                })
                .toList();
        int noonOfMidsummer = 24 * 171 + 12;
        // Source: Erbs and others 1982, hourly, at a clearness of 0.5: 0.6592 of the global.
        assertThat(read(lines).diffuseWm2(noonOfMidsummer) / read(YEAR).globalWm2(noonOfMidsummer))
                .isCloseTo(0.659, within(0.002));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | SITE,x | Line 1: an EPW file begins with LOCATION; received \"SITE\"",
                "1 | LOCATION,a,b,c,d,e,95,0,0,0 | Line 1: latitude (cell 7) must be a decimal number from -90 to 90; received \"95\"",
                "1 | LOCATION,a,b,c,d,e | Line 1: latitude (cell 7) must be a decimal number from -90 to 90; received \"\"",
                "8 | DATA,1,1 | Line 8: the eighth line must be DATA PERIODS; received \"DATA\"",
                "8 | DATA PERIODS,1,4,x | Line 8: only files of one record per hour are read",
                "10 | 2001,1,1,2,0,x,hot,0,0,0,0,0,0,0,0,0 "
                        + "| Line 10: dry bulb temperature (cell 7) must be a decimal number from -90 to 70; received \"hot\"",
                "10 | 2001,1,1,2,0,x,99.9,0,0,0,0,0,0,0,0,0 "
                        + "| Line 10: dry bulb temperature (cell 7) must be a decimal number from -90 to 70; received \"99.9\"",
                "10 | 2001,1,1,2,0,x,9,0,0,0,0,0,0,9999,0,0 "
                        + "| Line 10: global horizontal radiation (cell 14) must be a decimal number from 0 to 2000; received \"9999\"",
                "10 | 2001,1,1,2,0,x,NaN,0,0,0,0,0,0,0,0,0 "
                        + "| Line 10: dry bulb temperature (cell 7) must be a decimal number from -90 to 70; received \"NaN\"",
                "10 | 2001,1,1,2,0,x,0x1p3,0,0,0,0,0,0,0,0,0 "
                        + "| Line 10: dry bulb temperature (cell 7) must be a decimal number from -90 to 70; received \"0x1p3\"",
                "10 | 2001,1,1,2,0,x,9,0,0,0,0,0,0,300f,0,0 "
                        + "| Line 10: global horizontal radiation (cell 14) must be a decimal number from 0 to 2000; received \"300f\"",
                "10 | 2001,1d,1,2 | Line 10: month (cell 2) must be a decimal number from 1 to 12; received \"1d\"",
                "1 | LOCATION,a,b,c,d,e,47,8,-11,0 "
                        + "| Line 1: time zone (cell 9) must lie within 3 hours of the sun's own, which at the longitude 8"
                        + " is +0.5; received \"-11\"",
                "10 | 2001,1,1,3,0,x,9,0,0,0,0,0,0,0,0,0 "
                        + "| Line 10: expected month 1, day 1, hour 2, received month 1, day 1, hour 3",
                "10 | 2001,1.5,1,2 | Line 10: month (cell 2) must be a whole number; received \"1.5\"",
            })
    void tellsTheLineAndWhatIsWrong(int line, String text, String message) {
        assertThatThrownBy(() -> read(with(line, text)))
                .isInstanceOf(EpwFormatException.class)
                .hasMessage(message);
    }

    // Source: IANA time zone database: Asia/Shanghai at Kashgar, Pacific/Kiritimati, Europe/Madrid at Vigo.
    @ParameterizedTest
    @CsvSource({"76.0, 8", "-157.5, 14", "-8.7, 1", "7.5, 1e0", "-179.5, 12"})
    void takesTheWidestTimeZonesThatPlacesHave(String longitude, String zone) {
        assertThat(read(with(1, "LOCATION,a,b,c,d,e,47," + longitude + "," + zone + ",0"))
                        .place()
                        .latitude())
                .isEqualTo(47);
    }

    @Test
    void refusesFilesThatAreTooShortTooLongOrEmpty() {
        assertThatThrownBy(() -> read(List.of())).hasMessage("Line 1: the file is empty");
        assertThatThrownBy(() -> read(YEAR.subList(0, 100)))
                .hasMessage("Line 100: the file ends before month 1, day 4, hour 21");
        List<String> longer = Stream.concat(YEAR.stream(), Stream.of("2001,1,1,1,0,x,9,0,0,0,0,0,0,0,0,0"))
                .toList();
        assertThatThrownBy(() -> read(longer)).hasMessage("Line 8769: the year already has its 8760 hours");
        assertThatThrownBy(() -> read(with(3, "x".repeat(30_000))))
                .hasMessage("Line 3: is longer than 20000 characters");
    }
}
