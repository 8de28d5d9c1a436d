package wayside.sizing.system;

import wayside.sizing.storage.ShortCircuit;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.ConductorSize;
import wayside.sizing.wiring.FaultCurrent;
import wayside.sizing.wiring.SizedCircuit;
import wayside.sizing.wiring.SizedConductor;

/**
 * The current of a short at the far end of a cable: what its source gives behind the cable and its joints, {@code I = V / (V /
 * I_source + rho L_2 / (1000 p S) + j R_j)}. Ohm's law; the copper is taken cold and the conductor as the thicker of those
 * offered, so that the current is not flattered.
 */
final class CableFault {
    private static final double JOINTS = 2;
    private static final Expression FAULT = Expression.commonPractice(
                    "I = V / (V / I_source + rho L_2 / (1000 p S) + j R_j)")
            .with("rho", 17.241, Unit.OHM_PER_KM);

    private CableFault() {}

    /** The source's own current where the cable can't be wired. */
    static FaultCurrent behind(String label, FaultCurrent source, SizedCircuit circuit) {
        if (!(circuit instanceof SizedCircuit.Wired wired)) {
            return source;
        }
        SizedConductor conductor = thicker(wired);
        Derived joints = Derived.convention(
                "cable: joints in a short behind it",
                JOINTS,
                Unit.COUNT,
                "Where it ends, plus and minus",
                Source.commonPractice());
        return source.reduced(FAULT.value(
                label,
                Unit.AMPERE,
                source.voltageV().as("V"),
                source.amperes().as("I_source"),
                wired.duty().roundTripM().as("L_2"),
                conductor.parallelCount().as("p"),
                areaMm2(conductor).as("S"),
                joints.as("j"),
                ShortCircuit.jointOhm().as("R_j")));
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
