package wayside.sizing.wiring;

import java.util.Optional;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.storage.BankVoltage;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.storage.ShortCircuit;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The current of a short at a battery's main fuse [A]: the estimate from its cells and joints, or what the rule asks of such
 * a battery, whichever is larger.
 *
 * <p>Source of the rule: ABYC E-11, Table V.A, by cold cranking current, and its rule for large banks: above 500 Ah or
 * 2,200 A cold cranking, 20 kA. Differs from the source in: a lithium bank of any size is asked 20 kA; a lead-acid bank
 * whose cold cranking current is not known is taken for the largest class of the table.
 */
public final class BankFault {
    private static final ReferenceTable TABLE_V_A = ReferenceTables.table("abyc-e11/interrupt-capacity");
    private static final ReferenceTable LARGE = ReferenceTables.table("abyc-e11/large-banks");
    private static final Expression LARGER = Expression.definition("I = max(I_cells, I_rule)");

    private final String label;
    private final Optional<String> field;

    private BankFault(String label, Optional<String> field) {
        this.label = label;
        this.field = field;
    }

    /**
     * @param label of the result
     * @param voltageV nominal voltage of the bus [V]
     * @param capacityAh of the whole bank [Ah]
     * @param coldCrankingA of the whole bank, when it is known [A]
     * @param field JSON Pointer of the field that says more of its short circuit, if there is one
     */
    public static Derived currentA(
            String label,
            Chemistry chemistry,
            Derived voltageV,
            Derived capacityAh,
            Optional<Derived> coldCrankingA,
            Optional<String> field) {
        ChemistryData data = ChemistryData.of(chemistry);
        Derived cells = ShortCircuit.currentA(
                label + ", from cells and joints",
                data,
                BankVoltage.nominalV(label + ", voltage of the cells", data, voltageV),
                capacityAh);
        Derived rule = new BankFault(label + ", least by the rule", field).rule(chemistry, capacityAh, coldCrankingA);
        return LARGER.value(label, Unit.AMPERE, cells.as("I_cells"), rule.as("I_rule"));
    }

    /** Of a starting battery that nothing is known of: the largest class of the table [A]. */
    public static Derived ofStarterBattery(String label) {
        return new BankFault(label, Optional.empty()).unknownCranking();
    }

    private Derived rule(Chemistry chemistry, Derived capacityAh, Optional<Derived> coldCrankingA) {
        ReferenceTable.Row large = LARGE.rows().get(0);
        boolean isLarge = capacityAh.value() > large.number("above_ah")
                || coldCrankingA.map(Derived::value).orElse(0.0) > large.number("above_cca");
        if (isLarge) {
            return LARGE.cell(label, large, "interrupt_A", Unit.AMPERE);
        }
        if (!chemistry.isLeadAcid()) {
            return lithium(chemistry, large);
        }
        return coldCrankingA.map(cranking -> byCranking(cranking.value())).orElseGet(this::unknownCranking);
    }

    private Derived lithium(Chemistry chemistry, ReferenceTable.Row large) {
        return Derived.leftOpen(
                label,
                large.number("interrupt_A"),
                Unit.AMPERE,
                field,
                "A " + chemistry.code() + " bank can push many thousand amperes into a short circuit; the data sheet of"
                        + " the bank may allow less",
                Source.commonPractice());
    }

    private Derived byCranking(double crankingA) {
        ReferenceTable.Row row = TABLE_V_A.rows().stream()
                .filter(r -> crankingA <= r.findNumber("bank_to_cca").orElse(Double.POSITIVE_INFINITY))
                .findFirst()
                .orElseThrow();
        return TABLE_V_A.cell(label, row, "main_A", Unit.AMPERE);
    }

    private Derived unknownCranking() {
        ReferenceTable.Row last = TABLE_V_A.rows().get(TABLE_V_A.rows().size() - 1);
        return Derived.leftOpen(
                label,
                last.number("main_A"),
                Unit.AMPERE,
                field,
                "The largest class of the table, since the battery's cold cranking current is not known",
                TABLE_V_A.source());
    }
}
