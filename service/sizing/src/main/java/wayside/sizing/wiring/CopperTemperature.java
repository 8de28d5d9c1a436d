package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Unit;

/**
 * How warm a conductor gets at its circuit's current.
 *
 * <p>{@code T = T_a + (T_c - T_a) (I / A)^2}, T_a the ambient, T_c the insulation class [C], A the ampacity where it lies
 * [A]: heat made goes with the square of the current, and A is the current that brings the copper to T_c. The same heat
 * balance is behind the ambient factors of NFPA 70.
 */
final class CopperTemperature {
    private static final Formula FORMULA = Formula.definition("T = T_a + (T_c - T_a) (I / A)^2, at most T_c");

    private CopperTemperature() {}

    /**
     * @param ampacityA of the conductors together [A]
     * @return [C]; the insulation class when they carry more than they may
     */
    static Derived of(CircuitDuty duty, Derived ampacityA) {
        Derived ambient = duty.surroundings().ambientC();
        Derived insulation = duty.surroundings().insulationC();
        double share = duty.currentA().value() / ampacityA.value();
        double rise = Math.max(0, insulation.value() - ambient.value()) * (share < 1 ? share * share : 1);
        return Derived.computed(
                duty.label("temperature of the copper"),
                ambient.value() + rise,
                Unit.CELSIUS,
                FORMULA,
                ambient.as("T_a"),
                insulation.as("T_c"),
                duty.currentA().as("I"),
                ampacityA.as("A"));
    }
}
