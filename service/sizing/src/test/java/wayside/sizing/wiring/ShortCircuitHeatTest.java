package wayside.sizing.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** The heat of a short circuit, in cable and fuse. */
class ShortCircuitHeatTest {
    private static final Source NONE = Source.definition();

    // Source: k of copper as secondary pages print it from BS 7671 and IEC 60364-5-54: PVC 70 C 115, PVC 90 C 100. For
    // 105 C no
    // printed k was seen; Onderdonk's formula with constants of its own, I = A sqrt(log10(1 + (Tm - Ta) / (234 + Ta)) /
    // (33 t)), A in
    // circular mils, gives the others within half a percent, and so judges that one.
    @ParameterizedTest
    @CsvSource({"70, 115", "90, 100"})
    void agreesWithThePrintedFactors(double insulationC, double printedK) {
        assertThat(Math.sqrt(ofOneMm2(insulationC))).isCloseTo(printedK, withPercentage(0.7));
    }

    @ParameterizedTest
    @CsvSource({"70, 160", "90, 160", "105, 160", "125, 250", "200, 350"})
    void agreesWithAFormulaOfOtherConstants(double insulationC, double finalC) {
        double circularMils = 1 / 0.000506707;
        double onderdonkA = circularMils * Math.sqrt(Math.log10(1 + (finalC - insulationC) / (234 + insulationC)) / 33);
        assertThat(Math.sqrt(ofOneMm2(insulationC))).isCloseTo(onderdonkA, withPercentage(0.7));
    }

    // 16 mm2 of PVC at 70 C: 115^2 x 256 = 3.39 million.
    @Test
    void goesWithTheSquareOfTheArea() {
        assertThat(outlasted(16, 70)).isCloseTo(115.0 * 115 * 256, withPercentage(1));
    }

    // Time-current sheets of blades: at twice the rating at most 5 s, above 40 A at six times at most 1 s: 20 and 36
    // I^2.
    @ParameterizedTest
    @CsvSource({"10, 2000", "40, 32000", "100, 360000"})
    void aBladeLetsThroughWhatItsTimesSay(double ratingA, double expectedA2s) {
        assertThat(letThrough("blade 32 V", ratingA))
                .hasValueSatisfying(heat -> assertThat(heat.value()).isCloseTo(expectedA2s, withPercentage(1e-9)));
    }

    @Test
    void whatNobodyTabulatedIsNotSaid() {
        assertThat(letThrough("class T", 100)).isEmpty();
        assertThat(letThrough("strip", 100)).isEmpty();
    }

    private static Optional<Derived> letThrough(String type, double ratingA) {
        FuseLink link = FuseLink.all().stream()
                .filter(one -> one.type().equals(type))
                .findFirst()
                .orElseThrow();
        return ShortCircuitHeat.letThroughA2s("heat", figure(ratingA, Unit.AMPERE), link);
    }

    private static double ofOneMm2(double insulationC) {
        return outlasted(1, insulationC);
    }

    private static double outlasted(double mm2, double insulationC) {
        return ShortCircuitHeat.outlastedA2s(
                        new ConductorLabels("fridge", "cable"),
                        figure(mm2, Unit.SQUARE_MILLIMETRE),
                        figure(insulationC, Unit.CELSIUS))
                .value();
    }

    private static Derived figure(double value, Unit unit) {
        return Derived.convention("figure", value, unit, "A test", NONE);
    }
}
