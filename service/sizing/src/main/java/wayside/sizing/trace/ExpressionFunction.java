package wayside.sizing.trace;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/** The functions of an expression. The name in small letters is what stands in its text. */
@SuppressWarnings("ImmutableEnumChecker") // The operators hold no state.
enum ExpressionFunction {
    SUM(Double::sum, 0),
    PRODUCT((a, b) -> a * b, 1),
    MIN(Math::min, Double.NaN),
    MAX(Math::max, Double.NaN),
    CEIL(Math::ceil),
    FLOOR(Math::floor),
    ABS(Math::abs),
    SQRT(Math::sqrt),
    EXP(Math::exp),
    LN(Math::log),
    SIN(Math::sin),
    COS(Math::cos),
    TAN(Math::tan),
    ASIN(Math::asin),
    ACOS(Math::acos);

    private final DoubleUnaryOperator ofOne;
    private final DoubleBinaryOperator ofTwo;
    private final double ofNothing;
    private final boolean gathers;

    ExpressionFunction(DoubleUnaryOperator ofOne) {
        this.ofOne = ofOne;
        this.ofTwo = (a, b) -> Double.NaN;
        this.ofNothing = Double.NaN;
        this.gathers = false;
    }

    ExpressionFunction(DoubleBinaryOperator ofTwo, double ofNothing) {
        this.ofOne = DoubleUnaryOperator.identity();
        this.ofTwo = ofTwo;
        this.ofNothing = ofNothing;
        this.gathers = true;
    }

    /** Whether it takes several values into one. */
    boolean gathers() {
        return gathers;
    }

    double of(double value) {
        return ofOne.applyAsDouble(value);
    }

    double of(double gathered, double next) {
        return ofTwo.applyAsDouble(gathered, next);
    }

    /** Of an empty list; not a number where that means nothing. */
    double ofNothing() {
        return ofNothing;
    }
}
