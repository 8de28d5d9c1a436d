package wayside.sizing.wiring;

import java.util.Optional;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The current that a fuse must be able to break without bursting [A].
 *
 * <p>Source: ABYC E-11, Table V.A, by cold cranking current, and its rule for large banks: above 500 Ah or 2,200 A cold
 * cranking, 20 kA. Differs from the source in: a lithium bank of any size is asked 20 kA, since a few cells of low
 * resistance push thousands of amperes; a lead-acid bank whose cold cranking current is not known is taken for the
 * largest class of the table.
 */
final class InterruptDemand {
    private static final ReferenceTable TABLE_V_A = ReferenceTables.table("abyc-e11/interrupt-capacity");
    private static final ReferenceTable LARGE = ReferenceTables.table("abyc-e11/large-banks");

    private InterruptDemand() {}

    /**
     * @param label of the result
     * @param feed what stands behind the fuse
     */
    static Derived of(String label, Feed feed) {
        if (feed instanceof Feed.ShortCircuit known) {
            return known.currentA();
        }
        return feed instanceof Feed.Bank bank ? ofBank(label, bank) : ofBranch(label, ((Feed.Branch) feed).field());
    }

    private static Derived ofBranch(String label, Optional<String> field) {
        return Derived.leftOpen(
                label,
                TABLE_V_A.rows().get(0).number("branch_A"),
                Unit.AMPERE,
                field,
                "A branch behind a main fuse, on a bank of up to 650 A cold cranking; a circuit straight from a bank"
                        + " needs far more, so name the bank if it is one",
                TABLE_V_A.source());
    }

    private static Derived ofBank(String label, Feed.Bank bank) {
        ReferenceTable.Row large = LARGE.rows().get(0);
        if (isLarge(bank, large)) {
            return LARGE.cell(label, large, "interrupt_A", Unit.AMPERE);
        }
        if (!bank.chemistry().isLeadAcid()) {
            return lithium(label, bank.chemistry(), large, bank.field());
        }
        return bank.coldCrankingA()
                .map(cranking -> byCranking(label, cranking.value()))
                .orElseGet(() -> unknownCranking(label, bank.field()));
    }

    private static boolean isLarge(Feed.Bank bank, ReferenceTable.Row large) {
        return bank.capacityAh().value() > large.number("above_ah")
                || bank.coldCrankingA().map(Derived::value).orElse(0.0) > large.number("above_cca");
    }

    private static Derived lithium(
            String label, Chemistry chemistry, ReferenceTable.Row large, Optional<String> field) {
        return Derived.leftOpen(
                label,
                large.number("interrupt_A"),
                Unit.AMPERE,
                field,
                "A " + chemistry.code() + " bank can push many thousand amperes into a short circuit; the data sheet of"
                        + " the bank may allow less",
                Source.commonPractice());
    }

    private static Derived byCranking(String label, double crankingA) {
        ReferenceTable.Row row = TABLE_V_A.rows().stream()
                .filter(r -> crankingA <= r.findNumber("bank_to_cca").orElse(Double.POSITIVE_INFINITY))
                .findFirst()
                .orElseThrow();
        return TABLE_V_A.cell(label, row, "main_A", Unit.AMPERE);
    }

    private static Derived unknownCranking(String label, Optional<String> field) {
        ReferenceTable.Row last = TABLE_V_A.rows().get(TABLE_V_A.rows().size() - 1);
        return Derived.leftOpen(
                label,
                last.number("main_A"),
                Unit.AMPERE,
                field,
                "The largest class of the table, since the bank's cold cranking current is not known",
                TABLE_V_A.source());
    }
}
