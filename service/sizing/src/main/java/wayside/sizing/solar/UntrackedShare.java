package wayside.sizing.solar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wayside.sizing.solar.array.ArrayOutput;
import wayside.sizing.solar.array.ModuleFigures;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** What a string keeps of its best power behind a controller that ties it to the battery instead of tracking. */
public final class UntrackedShare {
    /**
     * The battery at V_w / V_n of its nominal voltage, between rest and absorption; g is the gain of current a little below
     * the best point.
     */
    private static final Expression SHARE = Expression.commonPractice(
                    "s = min(1, g (V_w / V_n * V) / (n V_mp (1 + b (T_c - T_0))))")
            .with("g", 1.05, Unit.COUNT)
            .with("V_w", 13.6, Unit.VOLT)
            .with("V_n", 12, Unit.VOLT)
            .with("T_0", ArrayOutput.STC_CELL_C, Unit.CELSIUS);

    /** So hot that no voltage would be left. */
    private static final Expression NOTHING = Expression.commonPractice("s = max(0, 1 + b (T_c - T_0))")
            .with("T_0", ArrayOutput.STC_CELL_C, Unit.CELSIUS);

    private static final NamedOperation SUNNIEST = NamedOperation.of(
            NamedOperation.Kind.BEST_OF,
            "The cell temperature T_c of the month with the most light G on the panel",
            Source.definition());
    private static final double VMP_PER_K = -0.0042;

    private UntrackedShare() {}

    /**
     * The share in the sunniest of the months: {@code s = min(1, 1.05 V_bat / V_mp(T_c))}, at V_bat = 13.6 V on a 12 V bus.
     *
     * @param seriesCount modules in series
     * @param bus nominal voltage [V]
     * @param months not empty
     * @return [share]
     */
    public static Derived of(Derived seriesCount, ModuleFigures module, Derived bus, List<SolarMonth> months) {
        return at(cellC(months), seriesCount, module, bus);
    }

    /** The share at a cell temperature [C]; 0 where cells so hot have no voltage left. */
    static Derived at(Derived cell, Derived seriesCount, ModuleFigures module, Derived bus) {
        Derived beta = module.voltagePerK()
                .orElseGet(() -> module.coefficientLeftOpen(
                        "module: working voltage per kelvin", VMP_PER_K, "Crystalline silicon"));
        String label = "string: share of its best power without a tracker";
        if (ArrayOutput.temperatureFactor(cell.value(), beta.value()) == 0) {
            return NOTHING.value(label, Unit.SHARE, beta.as("b"), cell.as("T_c"));
        }
        return SHARE.value(
                label,
                Unit.SHARE,
                bus.as("V"),
                seriesCount.as("n"),
                module.workingV().as("V_mp"),
                beta.as("b"),
                cell.as("T_c"));
    }

    private static Derived cellC(List<SolarMonth> months) {
        SolarMonth sunniest = months.stream()
                .max(Comparator.comparingDouble(m -> m.planeKwhM2().value()))
                .orElseThrow();
        List<Input> inputs = new ArrayList<>();
        for (SolarMonth month : months) {
            inputs.add(month.planeKwhM2().as("G"));
            inputs.add(month.cellTemperatureC().as("T_c"));
        }
        return SUNNIEST.value(
                "string: cells in its sunniest month",
                sunniest.cellTemperatureC().value(),
                Unit.CELSIUS,
                inputs);
    }
}
