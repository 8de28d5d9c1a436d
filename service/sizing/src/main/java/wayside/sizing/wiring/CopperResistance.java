package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
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
    private static final Expression WARMED = Expression.of(
                    "R = R_0 (1 + a (T - T_20)) / (1 + a (T_0 - T_20))",
                    Source.standard("International Annealed Copper Standard", "temperature coefficient at 20 C"))
            .with("a", 0.00393, Unit.PER_KELVIN)
            .with("T_20", 20, Unit.CELSIUS);
    private static final Expression FROM_20_C = WARMED.with("T_0", 20, Unit.CELSIUS);
    private static final Expression FROM_75_C = WARMED.with("T_0", 75, Unit.CELSIUS);

    private CopperResistance() {}

    /**
     * @param label of the result
     * @param at20C known resistance [Ohm/km]
     * @param temperatureC [C]
     * @return [Ohm/km]
     */
    static Derived from20C(String label, Derived at20C, Derived temperatureC) {
        return FROM_20_C.value(label, Unit.OHM_PER_KM, at20C.as("R_0"), temperatureC.as("T"));
    }

    /**
     * @param label of the result
     * @param at75C known resistance [Ohm/km]
     * @param temperatureC [C]
     * @return [Ohm/km]
     */
    static Derived from75C(String label, Derived at75C, Derived temperatureC) {
        return FROM_75_C.value(label, Unit.OHM_PER_KM, at75C.as("R_0"), temperatureC.as("T"));
    }
}
