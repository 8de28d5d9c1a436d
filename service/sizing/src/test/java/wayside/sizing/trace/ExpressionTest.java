package wayside.sizing.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What an expression means. Each expectation was worked out by hand. */
class ExpressionTest {
    private static final double LAST_DIGITS = 1e-15;

    private static double value(String text, Input... inputs) {
        return Expression.definition(text).value("result", Unit.COUNT, inputs).value();
    }

    private static Input input(String symbol, double value) {
        return Derived.given(symbol, value, Unit.COUNT, "/" + symbol).as(symbol);
    }

    private static Input[] list(String symbol, double... values) {
        return DoubleStream.of(values).mapToObj(value -> input(symbol, value)).toArray(Input[]::new);
    }

    private static double along(String text, Input[]... lists) {
        return value(text, Stream.of(lists).flatMap(Stream::of).toArray(Input[]::new));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "x = 7 | 7",
                "x = 1.5e3 | 1500",
                "x = 2e-3 | 0.002",
                "x = 2 + 3 * 4 | 14",
                "x = (2 + 3) * 4 | 20",
                "x = 2 3 + 4 | 10",
                "x = 2 (3 + 4) | 14",
                "x = (1 + 2) (3 + 4) | 21",
                "x = 2 3 ^ 2 | 18",
                "x = 6 / (2 3) | 1",
                "x = 2 3 / 4 | 1.5",
                "x = 2 * 3 ^ 2 | 18",
                "x = 2 ^ 3 ^ 2 | 512",
                "x = 4 ^ 0.5 | 2",
                "x = 2 ^ -1 | 0.5",
                "x = -2 ^ 2 | -4",
                "x = (-2) ^ 2 | 4",
                "x = 3 - -2 | 5",
                "x = 3 * -2 | -6",
                "x = 3 -2 | 1",
                "x = -(2 + 3) | -5",
            })
    void meansWhatItSays(String text, double expected) {
        assertThat(value(text)).isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "x = 10 - 4 - 3 | 3",
                "x = 24 / 4 / 3 | 2",
                "x = 24 / 4 * 3 | 18",
                // From right to left it would be 0.6.
                "x = 0.1 + 0.2 + 0.3 | 0.6000000000000001",
                // From right to left it would be 0.021.
                "x = 0.1 0.3 0.7 | 0.020999999999999998",
            })
    void isWorkedOutFromLeftToRightAsJavaDoes(String text, double expected) {
        assertThat(value(text)).isEqualTo(expected);
    }

    @Test
    void aSpaceIsAProductOfSymbols() {
        assertThat(value("E = P h d", input("P", 50), input("h", 24), input("d", 0.5)))
                .isEqualTo(600);
        assertThat(value("R = r C_0 / C2", input("r", 3), input("C_0", 100), input("C2", 50)))
                .isEqualTo(6);
        assertThat(value("W = k (a + b)", input("k", 2), input("a", 3), input("b", 4)))
                .isEqualTo(14);
    }

    @ParameterizedTest
    @EnumSource(ExpressionFunction.class)
    void knowsEveryFunction(ExpressionFunction function) {
        record Case(String text, double expected) {}
        List<Case> cases =
                switch (function) {
                    case SUM -> List.of(new Case("sum(2, 3, 5)", 10));
                    case PRODUCT -> List.of(new Case("product(2, 3, 5)", 30));
                    case MIN -> List.of(new Case("min(3, 1, 2)", 1), new Case("min(-1, 0)", -1));
                    case MAX -> List.of(new Case("max(3, 7, 5)", 7), new Case("max(0, 2 - 5)", 0));
                    case CEIL -> List.of(new Case("ceil(2.1)", 3), new Case("ceil(-2.1)", -2), new Case("ceil(4)", 4));
                    case FLOOR -> List.of(new Case("floor(2.9)", 2), new Case("floor(-2.1)", -3));
                    case ABS -> List.of(new Case("abs(-3)", 3), new Case("abs(3)", 3));
                    case SQRT -> List.of(new Case("sqrt(16)", 4));
                    case EXP -> List.of(new Case("exp(0)", 1), new Case("exp(1)", 2.718281828459045));
                    case LN -> List.of(new Case("ln(1)", 0), new Case("ln(exp(2))", 2));
                    case SIN -> List.of(new Case("sin(pi / 2)", 1), new Case("sin(pi / 6)", 0.5));
                    case COS -> List.of(new Case("cos(0)", 1), new Case("cos(pi)", -1));
                    case TAN -> List.of(new Case("tan(0)", 0), new Case("tan(pi / 4)", 1));
                    case ASIN -> List.of(new Case("asin(1)", 1.5707963267948966), new Case("asin(0)", 0));
                    case ACOS -> List.of(new Case("acos(1)", 0), new Case("acos(0)", 1.5707963267948966));
                };
        for (Case one : cases) {
            assertThat(value("x = " + one.text())).as(one.text()).isCloseTo(one.expected(), within(LAST_DIGITS));
        }
    }

    @Test
    void runsAlongAList() {
        assertThat(along("x = sum(E)", list("E", 2, 3, 5))).isEqualTo(10);
        assertThat(along("x = product(k)", list("k", 2, 3, 5))).isEqualTo(30);
        assertThat(along("x = min(E)", list("E", 3, 2, 5))).isEqualTo(2);
        assertThat(along("x = max(E)", list("E", 3, 5, 2))).isEqualTo(5);
        assertThat(along("x = sum(E) / max(E)", list("E", 2, 3, 5))).isEqualTo(2);
        assertThat(along("x = max(0, sum(E) - 12)", list("E", 2, 3, 5))).isZero();
    }

    @Test
    void aListOfOneIsAList() {
        assertThat(along("x = sum(E)", list("E", 7))).isEqualTo(7);
        assertThat(along("x = max(E) - min(E)", list("E", 7))).isZero();
    }

    // 100 (0.1 + 0.2 50 / 1000) + 200 (0.1 + 0.2 100 / 1000) = 11 + 24.
    @Test
    void aScalarStandsForEveryEntryOfTheListsBesideIt() {
        assertThat(along(
                        "x = sum(E (k1 + k2 P / P_r))",
                        list("E", 100, 200),
                        list("P", 50, 100),
                        list("k1", 0.1),
                        list("k2", 0.2),
                        list("P_r", 1000)))
                .isCloseTo(35, within(1e-13));
        assertThat(along("x = sum(2 E)", list("E", 1, 2))).isEqualTo(6);
    }

    @Test
    void anEmptyListAddsNothing() {
        assertThat(value("x = sum(E)")).isZero();
        assertThat(value("x = product(k)")).isEqualTo(1);
        assertThat(value("x = 3 + sum(E P)", input("P", 4))).isEqualTo(3);
    }

    @Test
    void nothingHasNoLeastAndNoGreatest() {
        assertThatIllegalArgumentException().isThrownBy(() -> value("x = min(E)"));
        assertThatIllegalArgumentException().isThrownBy(() -> value("x = max(E)"));
    }

    @Test
    void listsThatRunAlongEachOtherAreEquallyLong() {
        assertThatIllegalStateException()
                .isThrownBy(() -> along("x = sum(E P)", list("E", 1, 2, 3), list("P", 1, 2)))
                .withMessageContaining("3 and 2");
        assertThatIllegalStateException().isThrownBy(() -> along("x = sum(E P)", list("P", 1, 2)));
    }

    @Test
    void aConstantAlwaysHasItsValue() {
        Expression expression = Expression.definition("R = r C_0 / C").with("C_0", 100, Unit.AMPERE_HOUR);
        assertThat(expression
                        .value("R", Unit.OHM, input("r", 0.5), input("C", 200))
                        .value())
                .isEqualTo(0.25);
        assertThat(expression.constants()).containsExactly(new Constant("C_0", Quantity.of(100, Unit.AMPERE_HOUR)));
        assertThat(Expression.definition("x = sum(c E)")
                        .with("c", 3, Unit.COUNT)
                        .value("x", Unit.COUNT, input("E", 1), input("E", 2))
                        .value())
                .isEqualTo(9);
    }

    @Test
    void aConstantIsASymbolOfTheExpressionAndNoInput() {
        Expression expression = Expression.definition("y = a c").with("c", 3, Unit.COUNT);
        assertThatIllegalArgumentException().isThrownBy(() -> expression.with("d", 1, Unit.COUNT));
        assertThatIllegalStateException()
                .isThrownBy(() -> expression.value("y", Unit.COUNT, input("a", 1), input("c", 4)));
    }

    @Test
    void everySymbolHasItsInputAndEveryInputItsSymbol() {
        assertThatIllegalStateException()
                .isThrownBy(() -> value("E = P h", input("P", 1)))
                .withMessageContaining("h");
        assertThatIllegalStateException()
                .isThrownBy(() -> value("E = P h", input("P", 1), input("h", 1), input("d", 1)))
                .withMessageContaining("d");
        assertThatIllegalStateException().isThrownBy(() -> value("x = 1", input("a", 1)));
    }

    @Test
    void nothingRunsAlongAListUnbidden() {
        assertThatIllegalStateException().isThrownBy(() -> along("x = E + 1", list("E", 1, 2)));
        assertThatIllegalStateException().isThrownBy(() -> along("x = sum(E) / E", list("E", 1, 2)));
        assertThatIllegalStateException().isThrownBy(() -> along("x = max(0, E)", list("E", 1, 2)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "x = a / b c",
                "x = a / b (c + d)",
                "x = 1 / 2 pi",
                "P h",
                "= P h",
                "2 = P",
                "a b = c",
                "x =",
                "x = (a",
                "x = a)",
                "x = a +",
                "x = * a",
                "x = a ^",
                "x = a $ b",
                "x = a = b",
                "x = .5",
                "x = 1.2.3",
                "x = sqrt()",
                "x = max(a, )",
                "x = ceil(a, b)",
            })
    void refusesWhatIsNoExpression(String text) {
        assertThatIllegalArgumentException().isThrownBy(() -> Expression.definition(text));
    }

    @Test
    void refusesAResultThatIsNoNumber() {
        assertThatIllegalArgumentException().isThrownBy(() -> value("x = 1 / a", input("a", 0)));
        assertThatIllegalArgumentException().isThrownBy(() -> value("x = sqrt(a)", input("a", -1)));
    }

    @Test
    void whatIsShownIsWhatWasWorkedOut() {
        Expression expression = Expression.commonPractice("E = P h");
        Derived energy = expression.value("lamp: energy", Unit.WATT_HOUR, input("P", 5), input("h", 4));
        assertThat(energy).isInstanceOfSatisfying(Computed.class, computed -> {
            assertThat(computed.method()).isSameAs(expression).hasToString("E = P h");
            assertThat(computed.inputs()).extracting(Input::symbol).containsExactly("P", "h");
            assertThat(computed.quantity()).isEqualTo(Quantity.of(20, Unit.WATT_HOUR));
            assertThat(computed.source()).isEqualTo(Source.commonPractice());
        });
    }

    @Test
    void twoOfOneTextSourceAndConstantsAreEqual() {
        Expression one = Expression.definition("y = a c").with("c", 3, Unit.COUNT);
        assertThat(one)
                .isEqualTo(Expression.definition("y = a c").with("c", 3, Unit.COUNT))
                .hasSameHashCodeAs(Expression.definition("y = a c").with("c", 3, Unit.COUNT))
                .isNotEqualTo(Expression.definition("y = a c").with("c", 4, Unit.COUNT))
                .isNotEqualTo(Expression.commonPractice("y = a c").with("c", 3, Unit.COUNT))
                .isNotEqualTo(Expression.definition("y = c a").with("c", 3, Unit.COUNT));
    }
}
