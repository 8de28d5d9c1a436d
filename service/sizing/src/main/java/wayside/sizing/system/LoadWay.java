package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.SizedCircuit;

/**
 * The way from the bank to a load: what its cables lose one after the other, each at the current that it carries when everything
 * that may run together runs. Source: the note under NEC 551.73 (2017) adds each serial segment with the load that it sees. That the
 * whole way keeps the limit that the rule sets give for one circuit is a rule of this house, stricter than theirs.
 *
 * @param dropPercent of the nominal voltage, all cables of it [%]
 * @param limitPercent of the whole way [%]
 */
public record LoadWay(Derived dropPercent, Derived limitPercent) {
    /** What each cable of a way may lose of its limit. Common practice, no source. */
    static final double OF_THE_MAIN = 1.0 / 3;

    static final double OF_THE_REST = 2.0 / 3;
    static final double OF_THE_DISTRIBUTION = 1.0 / 3;

    private static final Expression TWO = Expression.definition("u = u_main + u_branch");
    private static final Expression THREE = Expression.definition("u = u_main + u_branch + u_all s");

    /** Those to the inverter and to the DC loads, as far as their cables could be sized; a converter gives its own voltage anew. */
    static List<LoadWay> all(List<SizedCircuit> circuits, Derived limitPercent) {
        List<LoadWay> ways = new ArrayList<>();
        Optional<Derived> main = drop(circuits, MainCircuits.MAIN_NAME);
        if (main.isEmpty()) {
            return ways;
        }
        drop(circuits, MainCircuits.INVERTER_NAME)
                .ifPresent(branch -> ways.add(new LoadWay(
                        TWO.value(
                                "voltage drop from battery to inverter",
                                Unit.PERCENT,
                                main.get().as("u_main"),
                                branch.as("u_branch")),
                        limitPercent)));
        Optional<Derived> converter = drop(circuits, MainCircuits.CONVERTER_NAME);
        if (converter.isPresent()) {
            ways.add(new LoadWay(
                    TWO.value(
                            "voltage drop from battery to DC converter",
                            Unit.PERCENT,
                            main.get().as("u_main"),
                            converter.get().as("u_branch")),
                    limitPercent));
            return ways;
        }
        drop(circuits, MainCircuits.DISTRIBUTION_NAME)
                .ifPresent(branch -> ways.add(new LoadWay(
                        THREE.value(
                                "voltage drop from battery to a DC load",
                                Unit.PERCENT,
                                main.get().as("u_main"),
                                branch.as("u_branch"),
                                limitPercent.as("u_all"),
                                left().as("s")),
                        limitPercent)));
        return ways;
    }

    private static Derived left() {
        return Derived.convention(
                "part of the voltage drop limit that is left for each load's own cable",
                1 - OF_THE_MAIN - OF_THE_DISTRIBUTION,
                Unit.SHARE,
                "From the fuse box to the load",
                Source.commonPractice());
    }

    private static Optional<Derived> drop(List<SizedCircuit> circuits, String name) {
        return circuits.stream()
                .filter(SizedCircuit.Wired.class::isInstance)
                .map(SizedCircuit.Wired.class::cast)
                .filter(circuit -> circuit.duty().name().equals(name))
                .findFirst()
                .map(circuit -> circuit.conductor().voltageDropPercent());
    }
}
