package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Resistance of copper at a temperature.
 *
 * <p>{@code R(T) = R20 (1 + a (T - 20))}; R [Ohm/km], T [C], a = 0.00393 per kelvin.
 *
 * <p>Valid for annealed copper, -50 to 200 C. Source: the constant-mass temperature coefficient of standard annealed
 * copper, 0.393 % per kelvin at 20 C (International Annealed Copper Standard). The factors printed with IEC 60228
 * follow 250 / (230 + T), 0.3 % apart at 75 C.
 */
final class CopperResistance {
    static final double COEFFICIENT_PER_K = 0.00393;
    private static final Formula FORMULA = new Formula(
            "R = R_0 (1 + 0.00393 (T - 20)) / (1 + 0.00393 (T_0 - 20))",
            Source.standard("International Annealed Copper Standard", "temperature coefficient at 20 C"));

    private CopperResistance() {}

    /** Resistance relative to that at 20 C [1]. */
    static double ratio(double temperatureC) {
        return 1 + COEFFICIENT_PER_K * (temperatureC - 20);
    }

    /**
     * @param label of the result
     * @param known resistance at the known temperature [Ohm/km]
     * @param knownC [C]
     * @param temperatureC [C]
     * @return [Ohm/km]
     */
    static Derived at(String label, Derived known, Derived knownC, Derived temperatureC) {
        return Derived.computed(
                label,
                known.value() * ratio(temperatureC.value()) / ratio(knownC.value()),
                Unit.OHM_PER_KM,
                FORMULA,
                known.as("R_0"),
                knownC.as("T_0"),
                temperatureC.as("T"));
    }
}
