package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * How warm a conductor gets at its circuit's current.
 *
 * <p>{@code T = T_a + max(0, T_c - T_a) min(1, I / A)^2}, T_a the ambient, T_c the insulation class [C], A the ampacity where it lies
 * [A]: heat made goes with the square of the current, and A is the current that brings the copper to T_c. The same heat
 * balance is behind the ambient factors of NFPA 70.
 */
final class CopperTemperature {
    private static final Expression WARMED = Expression.definition("T = T_a + max(0, T_c - T_a) min(1, I / A)^2");

    private CopperTemperature() {}

    /**
     * @param ampacityA of the conductors together [A]
     * @return [C]; the insulation class when they carry more than they may
     */
    static Derived of(CircuitDuty duty, ConductorLabels labels, Derived ampacityA) {
        return WARMED.value(
                labels.of("temperature of the copper"),
                Unit.CELSIUS,
                duty.surroundings().ambientC().as("T_a"),
                duty.surroundings().insulationC().as("T_c"),
                duty.currentA().as("I"),
                ampacityA.as("A"));
    }
}
