package wayside.sizing.solar.array;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * How many modules may sit in series: no more than the controller stands on the coldest morning, no fewer than it needs to
 * charge on the hottest roof.
 *
 * <p>{@code n_max = floor(V_c / V_cold)}, {@code n_min = ceil(V_b / V_hot)} with V_c the controller's limit, V_b the
 * charging voltage, V_cold and V_hot of one module [V].
 *
 * @param coldVoltage open-circuit voltage of one module on the coldest morning, and how it was found
 * @param hotWorkingV working voltage of one module on the hottest roof [V]
 * @param largestSeriesCount 0 when a single module is too much for the controller
 * @param smallestSeriesCount 1 or more
 */
public record StringWindow(
        ColdVoltage coldVoltage, Derived hotWorkingV, Derived largestSeriesCount, Derived smallestSeriesCount) {
    private static final double ASSUMED_PER_K = -0.004;

    /** More modules than this in one string make no sense on a vehicle; it also keeps the count finite. */
    private static final double MOST_IN_SERIES = 1000;

    /** The working voltage falls as the cell warms; a cold roof is given no credit. */
    private static final Expression HOT = Expression.definition("V = V_mp max(0, min(1, 1 + b (T - T_0)))")
            .with("T_0", ArrayOutput.STC_CELL_C, Unit.CELSIUS);

    private static final Expression LARGEST =
            Expression.definition("n_max = min(m, floor(V_c / V_cold))").with("m", MOST_IN_SERIES, Unit.COUNT);
    private static final Expression SMALLEST =
            Expression.definition("n_min = min(m, ceil(V_b / V_hot))").with("m", MOST_IN_SERIES, Unit.COUNT);
    private static final Expression MAXIMUM = Expression.of(
                    "I = k p I_sc", Source.standard("NFPA 70 National Electrical Code, 2020", "690.8(A)(1)"))
            .with("k", 1.25, Unit.COUNT);
    private static final Expression CONDUCTOR = Expression.of(
                    "I = k k p I_sc", Source.standard("NFPA 70 National Electrical Code, 2020", "690.8(B)(1)"))
            .with("k", 1.25, Unit.COUNT);

    /**
     * @param module by its label
     * @param coldestC air on the coldest morning of the trip [C]
     * @param hottestCellC cells on the hottest roof [C]
     * @param controllerV the highest voltage that the controller stands [V], above 0
     * @param chargingV the highest voltage that it charges the bank with [V], above 0
     */
    public static StringWindow of(
            ModuleFigures module, Derived coldestC, Derived hottestCellC, Derived controllerV, Derived chargingV) {
        ColdVoltage cold = ColdVoltage.of(module, coldestC);
        Derived hot = hot(module, hottestCellC);
        return new StringWindow(cold, hot, largest(controllerV, cold.volts()), smallest(chargingV, hot));
    }

    /** Whether there is a count that both limits allow. */
    public boolean fits() {
        return largestSeriesCount.value() >= smallestSeriesCount.value();
    }

    /**
     * Current that the array's cable must be reckoned with before any correction, and that no fuse may be below [A].
     *
     * @param parallelCount strings side by side, 1 or more
     */
    public static Derived conductorCurrentA(ModuleFigures module, Derived parallelCount) {
        return conductorCurrentA("array", module, parallelCount);
    }

    /**
     * The same for a part of an array.
     *
     * @param whose opens the label
     */
    public static Derived conductorCurrentA(String whose, ModuleFigures module, Derived parallelCount) {
        return current(CONDUCTOR, whose + ": current for conductor and fuse", module, parallelCount);
    }

    /**
     * The most that the array can give, with the sun brighter than in the test [A].
     *
     * @param parallelCount strings side by side, 1 or more
     */
    public static Derived maximumCurrentA(ModuleFigures module, Derived parallelCount) {
        return current(MAXIMUM, "array: greatest current", module, parallelCount);
    }

    private static Derived current(Expression expression, String label, ModuleFigures module, Derived parallelCount) {
        return expression.value(
                label,
                Unit.AMPERE,
                parallelCount.as("p"),
                module.shortCircuitA().as("I_sc"));
    }

    private static Derived hot(ModuleFigures module, Derived hottestCellC) {
        Derived coefficient = module.voltagePerK()
                .orElseGet(() -> module.coefficientLeftOpen(
                        "module: voltage per kelvin",
                        ASSUMED_PER_K,
                        "At the steep end for crystalline silicon, so that the hot voltage is not flattered"));
        return HOT.value(
                "module: working voltage on the hottest roof",
                Unit.VOLT,
                module.workingV().as("V_mp"),
                coefficient.as("b"),
                hottestCellC.as("T"));
    }

    private static Derived largest(Derived controllerV, Derived coldV) {
        return LARGEST.value("modules in series, at most", Unit.COUNT, controllerV.as("V_c"), coldV.as("V_cold"));
    }

    private static Derived smallest(Derived chargingV, Derived hotV) {
        return SMALLEST.value("modules in series, at least", Unit.COUNT, chargingV.as("V_b"), hotV.as("V_hot"));
    }
}
