package wayside.sizing.solar.array;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.brief.SolarModule;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

class StringWindowTest {
    // Source: trade manual on charge controllers, worked example: module of 33.2 V open circuit, +0.12 V per kelvin
    // below 25 C, record low -29 C: printed 39.68 V; 79.36, 119.04, 158.72 V for two, three, four; three fit a limit of
    // 150 V.
    @Test
    void agreesWithThePublishedStringExample() {
        SolarModule module = new SolarModule(33.2, 26.6, 8, OptionalDouble.of(-0.12 / 33.2));
        StringWindow window = window(module, -29, 70, 150, 57.6);
        assertThat(window.coldVoltage().volts().value()).isCloseTo(39.68, within(0.005));
        assertThat(window.largestSeriesCount().value()).isEqualTo(3);
        assertThat(window.coldVoltage().method()).isEqualTo("coefficient");
    }

    // Source: NFPA 70-2020, Table 690.7(A): -29 C lies in the band -26 to -30 C, factor 1.21; 40.17 V for the same
    // module.
    @Test
    void fallsBackOnTheFactorsOfTheCode() {
        SolarModule module = new SolarModule(33.2, 26.6, 8, OptionalDouble.empty());
        StringWindow window = window(module, -29, 70, 150, 57.6);
        assertThat(window.coldVoltage().volts().value()).isCloseTo(33.2 * 1.21, within(1e-9));
        assertThat(window.coldVoltage().method()).isEqualTo("nec-690-7-a");
    }

    // Source: NFPA 70-2020, Table 690.7(A), the cells at and beside the edges of their bands.
    @ParameterizedTest
    @CsvSource({
        "25, 1",
        "24.5, 1",
        "24, 1.02",
        "20, 1.02",
        "19, 1.04",
        "0, 1.10",
        "-0.5, 1.12",
        "-1, 1.12",
        "-5, 1.12",
        "-40, 1.25"
    })
    void readsTheBandOfAColdMorning(double coldestC, double factor) {
        SolarModule module = new SolarModule(40, 33, 8, OptionalDouble.empty());
        assertThat(window(module, coldestC, 70, 150, 14.4).coldVoltage().volts().value())
                .isCloseTo(40 * factor, within(1e-9));
    }

    // Source: NFPA 70-2020, 690.8(A)(1) and (B)(1): 1.25 Isc and 1.5625 Isc.
    @Test
    void reckonsWithMoreThanTheLabelsCurrent() {
        ModuleFigures module = ModuleFigures.of(new SolarModule(40, 33, 10, OptionalDouble.empty()));
        Derived two = Derived.given("strings", 2, Unit.COUNT, "/parallel");
        assertThat(StringWindow.maximumCurrentA(module, two).value()).isCloseTo(25, within(1e-12));
        assertThat(StringWindow.conductorCurrentA(module, two).value()).isCloseTo(31.25, within(1e-12));
    }

    // Common practice, no source: a 36-cell module (about 18 V at work) still charges a 12 V battery on a hot roof and
    // two are needed for 24 V; one alone never charges 24 V.
    @Test
    void needsTwoTwelveVoltModulesForTwentyFourVolts() {
        SolarModule module = new SolarModule(22, 18.2, 6, OptionalDouble.of(-0.003));
        assertThat(window(module, -10, 75, 100, 14.4).smallestSeriesCount().value())
                .isEqualTo(1);
        assertThat(window(module, -10, 75, 100, 28.8).smallestSeriesCount().value())
                .isEqualTo(2);
    }

    @Test
    void saysWhenNoStringFits() {
        SolarModule module = new SolarModule(49, 41, 13, OptionalDouble.of(-0.0027));
        assertThat(window(module, -20, 70, 50, 14.4).fits()).isFalse();
        assertThat(window(module, -20, 70, 100, 14.4).fits()).isTrue();
    }

    @Property
    void aColderMorningNeverAllowsALongerString(
            @ForAll @DoubleRange(min = -60, max = 40) double warmerC,
            @ForAll @DoubleRange(min = 0, max = 30) double colderByK,
            @ForAll boolean coefficientKnown) {
        SolarModule module =
                new SolarModule(40, 33, 10, coefficientKnown ? OptionalDouble.of(-0.003) : OptionalDouble.empty());
        double warm =
                window(module, warmerC, 70, 150, 14.4).largestSeriesCount().value();
        double cold = window(module, warmerC - colderByK, 70, 150, 14.4)
                .largestSeriesCount()
                .value();
        assertThat(cold).isLessThanOrEqualTo(warm);
    }

    private static StringWindow window(
            SolarModule module, double coldestC, double hottestC, double controllerV, double chargingV) {
        return StringWindow.of(
                ModuleFigures.of(module),
                Derived.given("coldest morning", coldestC, Unit.CELSIUS, "/coldestC"),
                Derived.given("hottest cell", hottestC, Unit.CELSIUS, "/hottestC"),
                Derived.given("controller limit", controllerV, Unit.VOLT, "/controllerV"),
                Derived.given("charging voltage", chargingV, Unit.VOLT, "/chargingV"));
    }
}
