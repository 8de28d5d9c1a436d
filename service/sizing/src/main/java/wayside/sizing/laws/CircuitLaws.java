package wayside.sizing.laws;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.ShortfallCode;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.CircuitShortfall;
import wayside.sizing.wiring.SizedCircuit;

/** What must hold for the cables and fuses of a system: of each law the circuit that is nearest to its limit. */
final class CircuitLaws {
    private static final double HIGHEST_BUS_V = 48;
    private static final Map<Unit, LawCode> WITHOUT_A_KIND =
            Map.of(Unit.VOLT, LawCode.FUSE_VOLTAGE, Unit.AMPERE, LawCode.BREAKING_CAPACITY);

    private final List<SizedCircuit> circuits;
    private final double busV;

    CircuitLaws(List<SizedCircuit> circuits, double busV) {
        this.circuits = circuits;
        this.busV = busV;
    }

    List<Law> all() {
        List<Law> laws = new ArrayList<>();
        List<SizedCircuit.Wired> wired = circuits.stream()
                .filter(SizedCircuit.Wired.class::isInstance)
                .map(SizedCircuit.Wired.class::cast)
                .toList();
        for (SizedCircuit circuit : circuits) {
            if (circuit instanceof SizedCircuit.NotFeasible failed) {
                laws.add(notWired(failed.shortfall()));
            }
        }
        addNearest(laws, wired.stream().map(CircuitLaws::fuseVoltage).toList());
        addNearest(laws, wired.stream().map(CircuitLaws::breaking).toList());
        addNearest(
                laws,
                wired.stream().flatMap(circuit -> outlasting(circuit).stream()).toList());
        return laws;
    }

    /** The one of these that is nearest to its limit, unless a circuit that could not be wired broke the law already. */
    private static void addNearest(List<Law> laws, List<Law> each) {
        each.stream()
                .min(Comparator.comparingDouble(law -> law.margin().value()))
                .filter(nearest -> laws.stream().noneMatch(law -> law.code() == nearest.code()))
                .ifPresent(laws::add);
    }

    private static Law fuseVoltage(SizedCircuit.Wired circuit) {
        return Law.of(
                LawCode.FUSE_VOLTAGE,
                circuit.duty().highestVoltageV(),
                circuit.fuse().link().ratedVoltageV());
    }

    /** An estimate above what the fuse breaks is for the maker to confirm; the circuit's own caution says so. */
    private static Law breaking(SizedCircuit.Wired circuit) {
        Law law = Law.of(
                LawCode.BREAKING_CAPACITY,
                circuit.duty().interruptA(),
                circuit.fuse().link().breakingA());
        Optional<Caution> confirm = circuit.cautions().stream()
                .filter(caution -> caution.message().code() == CautionCode.CONFIRM_FAULT_CURRENT)
                .findFirst();
        return confirm.map(law::with).orElse(law);
    }

    private static Optional<Law> outlasting(SizedCircuit.Wired circuit) {
        return circuit.fuse()
                .letThroughA2s()
                .map(heat -> Law.of(
                        LawCode.CABLE_OUTLASTS_ITS_FUSE,
                        heat,
                        circuit.conductor().outlastedA2s()));
    }

    private Law notWired(CircuitShortfall failed) {
        return Law.of(broken(failed), failed.needed(), failed.available())
                .broken(new Shortfall(withHigherVoltage(failed.message()), failed.needed(), failed.available()));
    }

    /** A circuit without a kind of fuse breaks the law of the figure that none of them stands. */
    private static LawCode broken(CircuitShortfall failed) {
        return Optional.of(failed)
                .filter(why -> why.message().code() == ShortfallCode.NO_FUSE_TYPE)
                .map(why -> WITHOUT_A_KIND.get(why.needed().unit()))
                .orElse(LawCode.CIRCUIT_CAN_BE_WIRED);
    }

    /** Where less current would do, a bus of twice the voltage is a way out. */
    private Message withHigherVoltage(Message message) {
        return busV < HIGHEST_BUS_V && message.code().findSlot("higherVoltage").isPresent()
                ? message.with(Parameter.number("higherVoltage", 2 * busV, Unit.VOLT))
                : message;
    }
}
