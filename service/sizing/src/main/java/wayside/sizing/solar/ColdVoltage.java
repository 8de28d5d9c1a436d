package wayside.sizing.solar;

import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Open-circuit voltage of a module on the coldest morning.
 *
 * <p>By the module's coefficient, {@code V = Voc (1 + b (T - 25))}, b [1/K], T [C]; without one by the factor of the band,
 * {@code V = Voc f}. The two differ on purpose: the table, at about 0.4 % per kelvin, covers every crystalline module.
 *
 * <p>Source: NFPA 70-2020, 690.7(A) and Table 690.7(A). Differs from the source in: below -40 C, where the table ends,
 * its slope is carried on.
 *
 * @param volts [V]
 * @param method {@code coefficient} or {@code nec-690-7-a}
 */
public record ColdVoltage(Derived volts, String method) {
    private static final ReferenceTable FACTORS = ReferenceTables.table("nfpa70-2020/table-690-7-a");
    private static final Source SOURCE = Source.standard("NFPA 70 National Electrical Code, 2020", "690.7(A)");
    private static final Formula BY_COEFFICIENT = new Formula("V = Voc (1 + b (T - 25)), at least Voc", SOURCE);
    private static final Formula BY_FACTOR = new Formula("V = Voc f", SOURCE);
    private static final double STANDARD_C = 25;

    /** The table's slope above its end, so that a colder morning never asks for less than its last band. */
    private static final Formula BELOW_THE_TABLE = Formula.commonPractice("f = 1 + 0.004 (25 - T)");

    static ColdVoltage of(ModuleFigures module, Derived coldestC) {
        return module.voltagePerK()
                .map(coefficient -> byCoefficient(module.openCircuitV(), coefficient, coldestC))
                .orElseGet(() -> byFactor(module.openCircuitV(), coldestC));
    }

    private static ColdVoltage byCoefficient(Derived openCircuitV, Derived coefficient, Derived coldestC) {
        double rise = Math.max(0, coefficient.value() * (coldestC.value() - STANDARD_C));
        return new ColdVoltage(
                Derived.computed(
                        "module: open-circuit voltage on the coldest morning",
                        openCircuitV.value() * (1 + rise),
                        Unit.VOLT,
                        BY_COEFFICIENT,
                        openCircuitV.as("Voc"),
                        coefficient.as("b"),
                        coldestC.as("T")),
                "coefficient");
    }

    private static ColdVoltage byFactor(Derived openCircuitV, Derived coldestC) {
        Derived factor = factor(coldestC);
        return new ColdVoltage(
                Derived.computed(
                        "module: open-circuit voltage on the coldest morning",
                        openCircuitV.value() * factor.value(),
                        Unit.VOLT,
                        BY_FACTOR,
                        openCircuitV.as("Voc"),
                        factor.as("f")),
                "nec-690-7-a");
    }

    /** The band's factor; a temperature between two printed bands belongs to the colder one. */
    private static Derived factor(Derived coldestC) {
        double warmest = FACTORS.rows().get(0).number("ambient_to_C");
        if (coldestC.value() > warmest) {
            return Derived.computed(
                    "cold factor", 1, Unit.COUNT, Formula.definition("f = 1 above 24 C"), coldestC.as("T"));
        }
        return FACTORS.rows().stream()
                .filter(row -> row.number("ambient_from_C") <= coldestC.value())
                .findFirst()
                .map(row -> FACTORS.cell("cold factor", row, "factor", Unit.COUNT))
                .orElseGet(() -> Derived.computed(
                        "cold factor",
                        1 + 0.004 * (STANDARD_C - coldestC.value()),
                        Unit.COUNT,
                        BELOW_THE_TABLE,
                        coldestC.as("T")));
    }
}
