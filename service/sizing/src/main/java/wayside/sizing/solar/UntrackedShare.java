package wayside.sizing.solar;

import java.util.Comparator;
import java.util.List;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** What a string keeps of its best power behind a controller that ties it to the battery instead of tracking. */
public final class UntrackedShare {
    /** 13.6 V on a 12 V bus, between rest and absorption. */
    private static final double WORKING_SHARE = 13.6 / 12;

    private static final double VMP_PER_K = -0.0042;

    private UntrackedShare() {}

    /**
     * The share in the sunniest of the months: {@link ArrayOutput#pwmShare}.
     *
     * @param seriesCount modules in series
     * @param bus nominal voltage [V]
     * @param months not empty
     * @return [share]
     */
    public static Derived of(
            Derived seriesCount, ModuleFigures module, Derived bus, List<SolarMonth> months) {
        SolarMonth sunniest = months.stream()
                .max(Comparator.comparingDouble(m -> m.planeKwhM2().value()))
                .orElseThrow();
        Derived cell = sunniest.cellTemperatureC();
        Derived beta = module.voltagePerK()
                .orElseGet(() -> module.coefficientLeftOpen(
                        "module: working voltage per kelvin", VMP_PER_K, "Crystalline silicon"));
        double vmp = seriesCount.value() * module.workingV().value();
        return Derived.computed(
                "string: share of its best power without a tracker",
                ArrayOutput.pwmShare(WORKING_SHARE * bus.value(), vmp, beta.value(), cell.value()),
                Unit.SHARE,
                Formula.commonPractice("min(1, 1.05 V_bat / (n Vmp (1 + b (Tc - 25)))), V_bat = 13.6/12 V"),
                bus.as("V"),
                seriesCount.as("n"),
                module.workingV().as("Vmp"),
                beta.as("b"),
                cell.as("Tc"));
    }
}
