package wayside.sizing.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

class CopperResistanceTest {
    // Source: IEC 60228, factors that bring a resistance measured at 5 C and 75 C to 20 C, as reprinted: 1.064 and
    // 0.820. They follow 250 / (230 + T), a coefficient of 0.004; 0.00393 lies 0.3 % off at 75 C.
    @ParameterizedTest
    @CsvSource({"5, 1.064", "20, 1", "75, 0.820"})
    void agreesWithTheTemperatureFactorsOfTheCableStandard(double temperatureC, double factor) {
        assertThat(1 / CopperResistance.ratio(temperatureC)).isCloseTo(factor, within(0.003 * factor));
    }

    @Property
    void bringsAResistanceThereAndBackAgain(
            @ForAll @DoubleRange(min = 0.05, max = 40) double ohmPerKm,
            @ForAll @DoubleRange(min = -40, max = 150) double fromC,
            @ForAll @DoubleRange(min = -40, max = 150) double toC) {
        Derived from = celsius(fromC);
        Derived to = celsius(toC);
        Derived known = Derived.given("known", ohmPerKm, Unit.OHM_PER_KM, "/test");
        Derived there = CopperResistance.at("there", known, from, to);
        assertThat(CopperResistance.at("back", there, to, from).value()).isCloseTo(ohmPerKm, within(1e-9 * ohmPerKm));
    }

    private static Derived celsius(double value) {
        return Derived.given("temperature", value, Unit.CELSIUS, "/test");
    }
}
