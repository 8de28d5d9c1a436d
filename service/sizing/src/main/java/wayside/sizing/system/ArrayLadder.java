package wayside.sizing.system;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.ControllerSize;
import wayside.sizing.brief.ModuleSize;
import wayside.sizing.sizes.NextSize;
import wayside.sizing.solar.array.StringWindow;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Derived;

/** The arrays that can be bought for a site: what its roof, its cold, its heat and its bus allow. */
public final class ArrayLadder {
    private final double bankV;
    private final double chargingV;
    private final List<ControllerSize> controllers;
    private final List<Candidate> candidates = new ArrayList<>();

    /** A module with its voltages in the cold and in the heat, and how many the roof takes. */
    private record Candidate(ModuleSize module, double coldV, double hotV, int most) {}

    /** Controllers of one voltage, by rising current. */
    private record Rungs(List<ControllerSize> rising) {
        static Rungs of(double volts, List<ControllerSize> all) {
            return new Rungs(all.stream()
                    .filter(size -> size.highestArrayV() == volts)
                    .sorted(Comparator.comparingDouble(ControllerSize::currentA))
                    .toList());
        }

        double mostA() {
            return rising.get(rising.size() - 1).currentA();
        }

        Optional<ControllerSize> findAtLeast(double neededA) {
            for (ControllerSize size : rising) {
                if (NextSize.reaches(size.currentA(), neededA)) {
                    return Optional.of(size);
                }
            }
            return Optional.empty();
        }
    }

    private ArrayLadder(Site site) {
        bankV = BatteryBank.bankVoltage(site.chemistry(), site.busVoltageV()).value();
        Derived charging = ArrayStrings.chargingV(site);
        chargingV = charging.value();
        controllers = Controllers.thatServe(site);
        RoofRoom roof = RoofRoom.of(site);
        ArrayStrings.Weather weather = ArrayStrings.Weather.of(site);
        for (ModuleSize module : site.sizes().modules()) {
            StringWindow window = weather.window(ModulePart.figures(module), charging);
            candidates.add(new Candidate(
                    module,
                    window.coldVoltage().volts().value(),
                    window.hotWorkingV().value(),
                    roof.takes(module)));
        }
    }

    public static ArrayLadder of(Site site) {
        return new ArrayLadder(site);
    }

    /** Whether any module suits any controller, roof or not. */
    boolean isEmpty() {
        return candidates.stream().noneMatch(candidate -> controllers.stream()
                .anyMatch(c -> longest(candidate, c.highestArrayV()) >= shortest(candidate)));
    }

    /** The highest voltage of the array that a controller stands [V]; 0 without any. */
    double highestControllerV() {
        return controllers.stream()
                .mapToDouble(ControllerSize::highestArrayV)
                .max()
                .orElse(0);
    }

    /** The next array at or above a need. */
    public Optional<StringOption> next(double neededW) {
        return NextSize.least(
                options(neededW),
                option -> NextSize.reaches(option.powerW(), neededW),
                StringOption::powerW,
                StringOption::pieces);
    }

    /** The largest that the roof takes. */
    public Optional<StringOption> largest() {
        return options(Double.POSITIVE_INFINITY).stream()
                .max(Comparator.comparingDouble(StringOption::powerW)
                        .thenComparing(
                                Comparator.comparingInt(StringOption::pieces).reversed()));
    }

    /** For each module, voltage and length of string the fewest strings that reach a need, or all that the roof takes. */
    private List<StringOption> options(double neededW) {
        List<StringOption> options = new ArrayList<>();
        for (double volts : voltages()) {
            Rungs rungs = Rungs.of(volts, controllers);
            for (Candidate candidate : candidates) {
                int longest = Math.min(longest(candidate, volts), candidate.most());
                for (int series = longest; series >= shortest(candidate); series--) {
                    double stringW = series * candidate.module().powerW();
                    int most = candidate.most() / series;
                    int parallel = (int) Math.max(1, Math.min(Math.ceil(neededW / stringW - 1e-9), most));
                    charged(candidate.module(), series, parallel, rungs).ifPresent(options::add);
                }
            }
        }
        return options;
    }

    private List<Double> voltages() {
        return controllers.stream()
                .map(ControllerSize::highestArrayV)
                .distinct()
                .sorted()
                .toList();
    }

    private static int longest(Candidate candidate, double volts) {
        return (int) (volts / candidate.coldV());
    }

    private int shortest(Candidate candidate) {
        return Math.max(1, (int) Math.ceil(chargingV / candidate.hotV()));
    }

    /** With the fewest controllers of a voltage that share out the strings. */
    private Optional<StringOption> charged(ModuleSize module, int series, int parallel, Rungs rungs) {
        double stringA = series * module.powerW() / bankV;
        int each = (int) Math.min(parallel, rungs.mostA() / stringA + 1e-9);
        if (each < 1) {
            return Optional.empty();
        }
        int count = (parallel + each - 1) / each;
        int strings = (parallel + count - 1) / count;
        return rungs.findAtLeast(strings * stringA)
                .map(controller -> new StringOption(module, series, parallel, controller, count));
    }
}
