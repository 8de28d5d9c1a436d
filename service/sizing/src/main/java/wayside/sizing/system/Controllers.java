package wayside.sizing.system;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wayside.sizing.brief.ControllerSize;
import wayside.sizing.sizes.NextSize;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The charge controllers of an array: none is made for more than about 100 A, so a large array has several, each with its own
 * strings, cables and fuses.
 *
 * @param size of each
 * @param count of them
 * @param stringCount strings on the one that has most
 * @param neededA output of each, exactly [A]
 * @param ratedA output of each [A]
 */
public record Controllers(ControllerSize size, Derived count, Derived stringCount, Derived neededA, Derived ratedA) {
    private static final NamedOperation FEWEST = NamedOperation.of(
            NamedOperation.Kind.BEST_OF,
            "the fewest controllers of the array's voltage that share out the p strings so that none gives more than is made:"
                    + " s n P_module / V with s = ceil(p / c) strings on the one that has most",
            Source.commonPractice());
    private static final Expression STRINGS = Expression.definition("s = ceil(p / c)");
    private static final Expression NEEDED = Expression.definition("I = s n P_module / V");
    private static final Expression TOGETHER = Expression.definition("I = c I_each");
    private static final NamedOperation RATING =
            NextSize.operation("the charge controllers that stand the array's voltage");

    /** Of controllers of a voltage. */
    static Controllers of(Site site, ArrayStrings strings, Derived bankVoltageV) {
        List<ControllerSize> ladder = thatServe(site).stream()
                .filter(size ->
                        size.highestArrayV() == strings.controllerMaximumV().value())
                .sorted(Comparator.comparingDouble(ControllerSize::currentA))
                .toList();
        double largestA = ladder.get(ladder.size() - 1).currentA();
        Derived count = FEWEST.value(
                "charge controllers",
                fewest(strings, bankVoltageV.value(), largestA),
                Unit.COUNT,
                strings.parallelCount().as("p"),
                strings.seriesCount().as("n"),
                strings.modulePowerW().as("P_module"),
                bankVoltageV.as("V"));
        Derived each = STRINGS.value(
                "charge controller: strings",
                Unit.COUNT,
                strings.parallelCount().as("p"),
                count.as("c"));
        Derived needed = NEEDED.value(
                "charge controller: output needed",
                Unit.AMPERE,
                each.as("s"),
                strings.seriesCount().as("n"),
                strings.modulePowerW().as("P_module"),
                bankVoltageV.as("V"));
        ControllerSize size = ladder.stream()
                .filter(rung -> NextSize.reaches(rung.currentA(), needed.value()))
                .findFirst()
                .orElse(ladder.get(ladder.size() - 1));
        Derived rated = RATING.value("charge controller: rated output", size.currentA(), Unit.AMPERE, needed.as("I"));
        return new Controllers(size, count, each, needed, rated);
    }

    /** Those that charge the bus. */
    static List<ControllerSize> thatServe(Site site) {
        List<ControllerSize> all = site.sizes().controllers();
        List<ControllerSize> serving = all.stream()
                .filter(size -> size.highestBusV() >= site.busVoltageV().value())
                .toList();
        return serving.isEmpty() ? all : serving;
    }

    /** One of each voltage that they stand, rising. */
    static List<ControllerSize> byVoltage(Site site) {
        Map<Double, ControllerSize> byVoltage = new TreeMap<>();
        thatServe(site).forEach(size -> byVoltage.putIfAbsent(size.highestArrayV(), size));
        return List.copyOf(byVoltage.values());
    }

    /** Whether a single string gives more than any of the voltage takes. */
    boolean areOverloaded() {
        return !NextSize.reaches(ratedA.value(), neededA.value());
    }

    boolean isBetterThan(Controllers other) {
        return areOverloaded() == other.areOverloaded() ? count.value() < other.count.value() : other.areOverloaded();
    }

    /** What they give together [A]. */
    Derived togetherA() {
        return TOGETHER.value(
                "charge controllers: rated output together", Unit.AMPERE, count.as("c"), ratedA.as("I_each"));
    }

    private static int fewest(ArrayStrings strings, double bankV, double largestA) {
        int parallel = (int) strings.parallelCount().value();
        double oneA = strings.seriesCount().value() * strings.modulePowerW().value() / bankV;
        int count = 1;
        while (count < parallel && Math.ceil((double) parallel / count) * oneA > largestA) {
            count++;
        }
        return count;
    }
}
