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
        double warmed = CopperResistance.from20C("warmed", ohmPerKm(1), celsius(temperatureC))
                .value();
        assertThat(1 / warmed).isCloseTo(factor, within(0.003 * factor));
    }

    @Property
    void isTheSameFromEitherTable(
            @ForAll @DoubleRange(min = 0.05, max = 40) double ohmPerKm,
            @ForAll @DoubleRange(min = -40, max = 150) double temperatureC) {
        Derived to = celsius(temperatureC);
        Derived at75C = CopperResistance.from20C("warm", ohmPerKm(ohmPerKm), celsius(75));
        double straight =
                CopperResistance.from20C("straight", ohmPerKm(ohmPerKm), to).value();
        double roundAbout = CopperResistance.from75C("round about", at75C, to).value();
        assertThat(roundAbout).isCloseTo(straight, within(1e-9 * ohmPerKm));
    }

    private static Derived ohmPerKm(double value) {
        return Derived.given("known", value, Unit.OHM_PER_KM, "/test");
    }

    private static Derived celsius(double value) {
        return Derived.given("temperature", value, Unit.CELSIUS, "/test");
    }
}
