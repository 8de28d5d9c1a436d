package wayside.sizing.laws;

import java.util.Comparator;
import java.util.Optional;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.storage.BusVoltage;
import wayside.sizing.storage.ShortCircuit;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.system.graph.Cable;
import wayside.sizing.system.graph.NodeKind;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.FuseOpening;
import wayside.sizing.wiring.SizedCircuit;

/**
 * The least short circuit at the far end of a cable opens its fuse within seconds: {@code I_low = s V / (a (V / I_cells + V / I - V
 * / I_bank))}. I [A] what a short draws there at most, I_bank at the bank, which for a fuse to break is never taken for small,
 * I_cells what cells and joints give; V [V] the bank's, s [share] how far it falls, a [1] how much higher the resistance of the way
 * gets. Common practice, no source: a caution and no fault.
 */
final class FuseOpensLaw {
    private static final Expression LEAST =
            Expression.commonPractice("I_low = s V / (a (V / I_cells + V / I - V / I_bank))");

    private final BatteryBank bank;
    private final Derived bankA;
    private final Derived cellsA;

    private FuseOpensLaw(SizedSystem system) {
        bank = system.battery().bank();
        bankA = system.prospectiveShortCircuitA();
        boolean stated =
                system.site().brief().system().bankRates().shortCircuitA().isPresent();
        cellsA = stated
                ? bankA
                : ShortCircuit.currentA(
                        "bank: short-circuit current of cells and joints",
                        bank.data(),
                        bank.bankVoltageV(),
                        bank.nominalCapacityAh());
    }

    /** Of the cable of the bank's that is nearest to its limit. */
    static Optional<Law> find(SizedSystem system) {
        FuseOpensLaw law = new FuseOpensLaw(system);
        return system.graph().cables().stream()
                .filter(cable -> cable.from() == NodeKind.BANK || cable.from() == NodeKind.BUSBAR)
                .flatMap(cable -> law.of(cable).stream())
                .min(Comparator.comparingDouble(one -> one.margin().value()));
    }

    private Optional<Law> of(Cable cable) {
        return cable.circuit() instanceof SizedCircuit.Wired wired
                ? cable.endFaultA().map(most -> law(wired, most))
                : Optional.empty();
    }

    private Law law(SizedCircuit.Wired circuit, Derived mostA) {
        Derived asked = FuseOpening.surelyA(circuit);
        Derived least = LEAST.value(
                circuit.duty().name() + ": least current of a short at its far end",
                Unit.AMPERE,
                lowest().as("s"),
                bank.bankVoltageV().as("V"),
                worse().as("a"),
                cellsA.as("I_cells"),
                mostA.as("I"),
                bankA.as("I_bank"));
        Law law = Law.of(LawCode.FUSE_OPENS_AT_THE_FAR_END, asked, least);
        return asked.value() <= least.value()
                ? law
                : law.with(Caution.commonPractice(
                        Severity.WARNING,
                        CautionCode.FUSE_MAY_NOT_OPEN,
                        Parameter.text("circuit", circuit.duty().name()),
                        Parameter.number("shortCircuit", least),
                        Parameter.number("needed", asked)));
    }

    private static Derived lowest() {
        return Derived.convention(
                "short circuit: lowest voltage as a share of the nominal one",
                BusVoltage.LOWEST_SHARE,
                Unit.SHARE,
                "The battery may be nearly empty",
                Source.commonPractice());
    }

    private static Derived worse() {
        return Derived.convention(
                "short circuit: how much higher the resistance of its way may be",
                2,
                Unit.COUNT,
                "An old, cold battery, warm copper and worn joints, against a new, full one with cold copper",
                Source.commonPractice());
    }
}
