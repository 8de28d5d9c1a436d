package wayside.sizing.wiring;

import java.util.Map;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * What an ambient other than 30 C makes of an ampacity.
 *
 * <p>For 60, 75, 90 and 105 C insulation the printed band; for the other classes the heat balance behind those bands,
 * {@code f = sqrt((Tc - Ta) / (Tc - 30))} with Tc the insulation class [C] and Ta the ambient [C], which gives every
 * printed cell within 0.01 at the top of its band. No credit below 30 C where the printed table gives none.
 *
 * <p>Source: NFPA 70-2023, Table 310.15(B)(1)(1); NFPA 70-2020, Table 690.31(A)(a).
 */
final class AmbientFactor {
    private static final Map<Integer, SteppedTable> PRINTED = Map.of(
            60, column("nfpa70-2023/table-310-15-b-1-1", 60),
            75, column("nfpa70-2023/table-310-15-b-1-1", 75),
            90, column("nfpa70-2023/table-310-15-b-1-1", 90),
            105, column("nfpa70-2020/table-690-31-a-a", 105));
    private static final Expression HEAT_BALANCE = Expression.of(
                    "f = min(1, sqrt(max(0, T_c - T_a) / (T_c - T_0)))",
                    Source.standard(
                            "NFPA 70 National Electrical Code, 2023",
                            "heat balance behind Table 310.15(B)(1)(1), no own column"))
            .with("T_0", 30, Unit.CELSIUS);

    private AmbientFactor() {}

    /**
     * @param labels of the conductor
     * @param insulationClassC class of the ampacity that it corrects [C]
     * @param ambientC [C]
     * @return 0 to 1.29; 0 when it is too hot for the class
     */
    static Derived of(ConductorLabels labels, Derived insulationClassC, Derived ambientC) {
        int insulation = (int) insulationClassC.value();
        SteppedTable printed = PRINTED.get(insulation);
        return printed == null
                ? heatBalance(labels.ofCircuit(label(insulation)), insulationClassC, ambientC)
                : printed.find(ambientC.value()).orElseGet(() -> tooHot(insulation));
    }

    private static SteppedTable column(String table, int insulationC) {
        return new SteppedTable(
                band -> label(insulationC) + ", " + band + " C",
                ReferenceTables.table(table),
                "ambient_to_C",
                "factor_" + insulationC + "C");
    }

    /** The formula by itself [1]. */
    static Derived heatBalance(String label, Derived insulationC, Derived ambientC) {
        return HEAT_BALANCE.value(label, Unit.COUNT, insulationC.as("T_c"), ambientC.as("T_a"));
    }

    private static Derived tooHot(int insulationC) {
        return Derived.convention(
                label(insulationC) + ", hotter than its table",
                0,
                Unit.COUNT,
                "The table has no factor for air so hot: the insulation can carry no current in it",
                HEAT_BALANCE.source());
    }

    private static String label(int insulationC) {
        return "ambient factor of " + insulationC + " C insulation";
    }
}
