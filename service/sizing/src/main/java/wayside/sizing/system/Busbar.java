package wayside.sizing.system;

import java.util.Optional;
import wayside.sizing.storage.ShortCircuit;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.ConductorSize;
import wayside.sizing.wiring.SizedCircuit;
import wayside.sizing.wiring.SizedConductor;

/**
 * The current of a short at the busbar, where every branch has its fuse: the bank's own behind the main cable and its
 * joints, {@code I = V / (V / I_bank + rho L_2 / (1000 p S) + j R_j)}. Ohm's law; the copper is taken cold and the
 * conductor as the thicker of those offered, so that the current is not flattered.
 */
final class Busbar {
    private static final double JOINTS_OF_THE_MAIN_CABLE = 2;
    private static final Expression FAULT = Expression.commonPractice(
                    "I = V / (V / I_bank + rho L_2 / (1000 p S) + j R_j)")
            .with("rho", 17.241, Unit.OHM_PER_KM);

    private Busbar() {}

    /**
     * @param bankFaultA of a short at the main fuse [A]
     * @param bankVoltageV of the bank [V]
     * @param main from bank to busbar; the bank's own current where it can't be wired
     */
    static Derived faultA(Derived bankFaultA, Derived bankVoltageV, Optional<SizedCircuit> main) {
        if (main.isEmpty() || !(main.get() instanceof SizedCircuit.Wired wired)) {
            return bankFaultA;
        }
        SizedConductor conductor = thicker(wired);
        Derived joints = Derived.convention(
                "main cable: joints in a short behind it",
                JOINTS_OF_THE_MAIN_CABLE,
                Unit.COUNT,
                "Where it ends at the busbars, plus and minus",
                Source.commonPractice());
        return FAULT.value(
                "busbar: prospective short-circuit current",
                Unit.AMPERE,
                bankVoltageV.as("V"),
                bankFaultA.as("I_bank"),
                wired.duty().roundTripM().as("L_2"),
                conductor.parallelCount().as("p"),
                areaMm2(conductor).as("S"),
                joints.as("j"),
                ShortCircuit.jointOhm().as("R_j"));
    }

    private static SizedConductor thicker(SizedCircuit.Wired wired) {
        return wired.metric()
                .filter(metric -> wholeMm2(metric) > wholeMm2(wired.conductor()))
                .orElse(wired.conductor());
    }

    private static double wholeMm2(SizedConductor conductor) {
        return areaMm2(conductor).value() * conductor.parallelCount().value();
    }

    /** Of a gauge the round wire's area, never less than what is sold. */
    private static Derived areaMm2(SizedConductor conductor) {
        return conductor.size() instanceof ConductorSize.Awg awg ? awg.gauge().roundAreaMm2() : conductor.areaMm2();
    }
}
