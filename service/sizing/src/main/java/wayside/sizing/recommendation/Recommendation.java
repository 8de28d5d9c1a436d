package wayside.sizing.recommendation;

import java.util.List;
import java.util.Optional;
import wayside.sizing.chance.ByChance;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Shortfall;

/**
 * The system that is recommended. One that does not fit the question is here too, with its shortfalls: they say what is
 * missing.
 *
 * @param system from the load list to cables and fuses
 * @param byChance how bank and array were found, when a chance of running flat was accepted
 */
public record Recommendation(SizedSystem system, Optional<ByChance> byChance) {
    /** Judged by days of autonomy and the worst month. */
    public static Recommendation of(SizedSystem system) {
        return new Recommendation(system, Optional.empty());
    }

    /** Judged by the chance that was found for it. */
    public static Recommendation of(SizedSystem system, ByChance found) {
        return new Recommendation(system, Optional.of(found));
    }

    private Optional<ChanceVerdict> verdict() {
        return byChance.map(found -> new ChanceVerdict(system, found));
    }

    public boolean feasible() {
        return shortfalls().isEmpty();
    }

    /** Empty when it fits. */
    public List<Shortfall> shortfalls() {
        return verdict().map(ChanceVerdict::shortfalls).orElseGet(system::shortfalls);
    }

    /** Defaults that are no numbers. */
    public List<Assumption> choices() {
        return verdict().map(ChanceVerdict::choices).orElseGet(system::choices);
    }

    /** What whoever builds it must know. */
    public List<Caution> cautions() {
        return verdict().map(ChanceVerdict::cautions).orElseGet(system::cautions);
    }
}
