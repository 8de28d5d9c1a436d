package wayside.sizing.solar;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
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
    private static final double STANDARD_C = 25;
    private static final double ASSUMED_PER_K = -0.004;
    private static final double CONTINUOUS = 1.25;
    private static final Formula HOT = Formula.definition(
            "V = Vmp (1 + b (T - 25)), at most Vmp, at least 0: the working voltage falls as the cell warms");
    private static final Formula LARGEST = Formula.definition("n_max = floor(V_c / V_cold)");
    private static final Formula SMALLEST = Formula.definition("n_min = ceil(V_b / V_hot)");
    private static final Formula MAXIMUM =
            new Formula("I = 1.25 p Isc", Source.standard("NFPA 70 National Electrical Code, 2020", "690.8(A)(1)"));
    private static final Formula CONDUCTOR = new Formula(
            "I = 1.25 x 1.25 p Isc = 1.5625 p Isc",
            Source.standard("NFPA 70 National Electrical Code, 2020", "690.8(B)(1)"));

    /** More modules than this in one string make no sense on a vehicle; it also keeps the count finite. */
    private static final double MOST_IN_SERIES = 1000;

    /**
     * @param module by its label
     * @param coldestC air on the coldest morning of the trip [C]
     * @param hottestCellC cells on the hottest roof [C]
     * @param controllerV the highest voltage that the controller stands [V], above 0
     * @param chargingV the highest voltage that it charges the bank with [V], above 0
     */
    public static StringWindow of(
            ModuleFigures module,
            Derived coldestC,
            Derived hottestCellC,
            Derived controllerV,
            Derived chargingV) {
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
        return current(
                "array: current for conductor and fuse", CONTINUOUS * CONTINUOUS, CONDUCTOR, module, parallelCount);
    }

    /**
     * The most that the array can give, with the sun brighter than in the test [A].
     *
     * @param parallelCount strings side by side, 1 or more
     */
    public static Derived maximumCurrentA(ModuleFigures module, Derived parallelCount) {
        return current("array: greatest current", CONTINUOUS, MAXIMUM, module, parallelCount);
    }

    private static Derived current(
            String label, double factor, Formula formula, ModuleFigures module, Derived parallelCount) {
        return Derived.computed(
                label,
                factor * parallelCount.value() * module.shortCircuitA().value(),
                Unit.AMPERE,
                formula,
                parallelCount.as("p"),
                module.shortCircuitA().as("Isc"));
    }

    private static Derived hot(ModuleFigures module, Derived hottestCellC) {
        Derived coefficient = module.voltagePerK()
                .orElseGet(() -> module.coefficientLeftOpen(
                        "module: voltage per kelvin",
                        ASSUMED_PER_K,
                        "At the steep end for crystalline silicon, so that the hot voltage is not flattered"));
        double factor = 1 + coefficient.value() * (hottestCellC.value() - STANDARD_C);
        return Derived.computed(
                "module: working voltage on the hottest roof",
                module.workingV().value() * Math.max(0, Math.min(1, factor)),
                Unit.VOLT,
                HOT,
                module.workingV().as("Vmp"),
                coefficient.as("b"),
                hottestCellC.as("T"));
    }

    private static Derived largest(Derived controllerV, Derived coldV) {
        return Derived.computed(
                "modules in series, at most",
                Math.min(MOST_IN_SERIES, Math.floor(controllerV.value() / coldV.value())),
                Unit.COUNT,
                LARGEST,
                controllerV.as("V_c"),
                coldV.as("V_cold"));
    }

    private static Derived smallest(Derived chargingV, Derived hotV) {
        double count = hotV.value() > 0 ? Math.ceil(chargingV.value() / hotV.value()) : MOST_IN_SERIES;
        return Derived.computed(
                "modules in series, at least",
                Math.min(MOST_IN_SERIES, count),
                Unit.COUNT,
                SMALLEST,
                chargingV.as("V_b"),
                hotV.as("V_hot"));
    }
}
