package wayside.sizing.laws;

import java.util.Comparator;
import java.util.Optional;
import wayside.sizing.system.AcSide;
import wayside.sizing.system.graph.AcCable;
import wayside.sizing.system.graph.AcCircuit;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.ShortfallCode;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Breakers of mains circuits against what they carry, the one nearest to its limit. */
final class AcLaws {
    private AcLaws() {}

    static Optional<Law> find(AcSide ac) {
        return ac.cables().stream()
                .map(AcCable::circuit)
                .map(AcLaws::law)
                .min(Comparator.comparingDouble(law -> law.margin().value()));
    }

    private static Law law(AcCircuit circuit) {
        Derived allowed = circuit.breakerA()
                .orElseGet(() -> Derived.convention(
                        circuit.name() + ": breaker",
                        0,
                        Unit.AMPERE,
                        "None of the table is so large",
                        Source.definition()));
        return Law.of(LawCode.AC_BREAKER, circuit.currentA(), allowed)
                .orElse(Message.of(
                        ShortfallCode.NO_AC_BREAKER,
                        Parameter.text("circuit", circuit.name()),
                        Parameter.number("current", circuit.currentA())));
    }
}
