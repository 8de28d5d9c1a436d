package wayside.sizing.wiring;

import java.util.Map;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
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
    private static final Formula HEAT_BALANCE = new Formula(
            "f = sqrt((Tc - Ta) / (Tc - 30)), at most 1",
            Source.standard(
                    "NFPA 70 National Electrical Code, 2023",
                    "heat balance behind Table 310.15(B)(1)(1), no own column"));
    private static final Formula TOO_HOT =
            Formula.definition("f = 0: the surroundings are hotter than the insulation may get");

    private AmbientFactor() {}

    /**
     * @param insulationClassC class of the ampacity that it corrects [C]
     * @param ambientC [C]
     * @return 0 to 1.29; 0 when it is too hot for the class
     */
    static Derived of(int insulationClassC, Derived ambientC) {
        SteppedTable printed = PRINTED.get(insulationClassC);
        return printed == null
                ? heatBalance(insulationClassC, ambientC)
                : printed.find(ambientC.value()).orElseGet(() -> tooHot(insulationClassC, ambientC));
    }

    private static SteppedTable column(String table, int insulationClassC) {
        return new SteppedTable(
                label(insulationClassC),
                ReferenceTables.table(table),
                "ambient_to_C",
                "factor_" + insulationClassC + "C");
    }

    private static Derived heatBalance(int insulationClassC, Derived ambientC) {
        if (ambientC.value() >= insulationClassC) {
            return tooHot(insulationClassC, ambientC);
        }
        return Derived.computed(
                label(insulationClassC),
                Math.min(1, ratio(insulationClassC, ambientC.value())),
                Unit.COUNT,
                HEAT_BALANCE,
                insulation(insulationClassC).as("Tc"),
                ambientC.as("Ta"));
    }

    /** The formula itself [1]. */
    static double ratio(double insulationC, double ambientC) {
        return Math.sqrt((insulationC - ambientC) / (insulationC - 30));
    }

    private static Derived tooHot(int insulationClassC, Derived ambientC) {
        return Derived.computed(
                label(insulationClassC),
                0,
                Unit.COUNT,
                TOO_HOT,
                insulation(insulationClassC).as("Tc"),
                ambientC.as("Ta"));
    }

    private static Derived insulation(int insulationClassC) {
        return Derived.computed(
                "insulation class of the printed ampacity",
                insulationClassC,
                Unit.CELSIUS,
                Formula.definition("the class of the column"));
    }

    private static String label(int insulationClassC) {
        return "ambient factor at " + insulationClassC + " C insulation";
    }
}
