package wayside.sizing.solar.array;

import java.util.List;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Open-circuit voltage of a module on the coldest morning.
 *
 * <p>By the module's coefficient, {@code V = V_oc (1 + max(0, b (T - 25)))}, b [1/K], T [C]; without one by the factor of the band,
 * {@code V = V_oc f}. The two differ on purpose: the table, at about 0.4 % per kelvin, covers every crystalline module.
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
    private static final Expression BY_COEFFICIENT = Expression.of("V = V_oc (1 + max(0, b (T - T_0)))", SOURCE)
            .with("T_0", ArrayOutput.STC_CELL_C, Unit.CELSIUS);
    private static final Expression BY_FACTOR = Expression.of("V = V_oc f", SOURCE);

    /** No cold to correct for. */
    private static final Expression ABOVE_THE_TABLE = Expression.of("V = V_oc", SOURCE);

    /** The table's slope above its end, so that a colder morning never asks for less than its last band. */
    private static final Expression BELOW_THE_TABLE = Expression.commonPractice("f = 1 + c (T_0 - T)")
            .with("c", 0.004, Unit.PER_KELVIN)
            .with("T_0", ArrayOutput.STC_CELL_C, Unit.CELSIUS);

    private static final String LABEL = "module: open-circuit voltage on the coldest morning";
    private static final String FACTOR = "module: cold factor";
    private static final double WARMEST_C = FACTORS.rows().get(0).number("ambient_to_C");

    /** By falling temperature. */
    private static final List<Band> BANDS = FACTORS.rows().stream()
            .map(row -> new Band(row.number("ambient_from_C"), FACTORS.cell(FACTOR, row, "factor", Unit.COUNT)))
            .toList();

    /** A row of the table. */
    private record Band(double fromC, Derived factor) {}

    static ColdVoltage of(ModuleFigures module, Derived coldestC) {
        return module.voltagePerK()
                .map(coefficient -> byCoefficient(module.openCircuitV(), coefficient, coldestC))
                .orElseGet(() -> byFactor(module.openCircuitV(), coldestC));
    }

    private static ColdVoltage byCoefficient(Derived openCircuitV, Derived coefficient, Derived coldestC) {
        Derived volts =
                BY_COEFFICIENT.value(LABEL, Unit.VOLT, openCircuitV.as("V_oc"), coefficient.as("b"), coldestC.as("T"));
        return new ColdVoltage(volts, "coefficient");
    }

    private static ColdVoltage byFactor(Derived openCircuitV, Derived coldestC) {
        Derived volts = coldestC.value() > WARMEST_C
                ? ABOVE_THE_TABLE.value(LABEL, Unit.VOLT, openCircuitV.as("V_oc"))
                : BY_FACTOR.value(
                        LABEL,
                        Unit.VOLT,
                        openCircuitV.as("V_oc"),
                        factor(coldestC).as("f"));
        return new ColdVoltage(volts, "nec-690-7-a");
    }

    /** The band's factor; a temperature between two printed bands belongs to the colder one. */
    private static Derived factor(Derived coldestC) {
        for (Band band : BANDS) {
            if (band.fromC() <= coldestC.value()) {
                return band.factor();
            }
        }
        return BELOW_THE_TABLE.value(FACTOR, Unit.COUNT, coldestC.as("T"));
    }
}
