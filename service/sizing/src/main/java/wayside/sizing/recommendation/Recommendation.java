package wayside.sizing.recommendation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wayside.sizing.brief.Compartment;
import wayside.sizing.brief.Target;
import wayside.sizing.chance.Borne;
import wayside.sizing.chance.ByChance;
import wayside.sizing.chance.ChanceDemands;
import wayside.sizing.laws.ChanceLaws;
import wayside.sizing.laws.Law;
import wayside.sizing.laws.Laws;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The system that is recommended. One that does not fit the question is here too, with its shortfalls: they say what is
 * missing.
 *
 * @param system from the load list to cables and fuses
 * @param byChance how bank and array were found, when a chance of running flat was accepted
 * @param laws what must hold between its parts, and whether it does
 * @param isMovedIndoors whether its bank stands in the cabin because nobody said where and frost would keep charge out of it
 * @param moreDrivingHours that it takes each day, of those that the customer allows [h]
 */
public record Recommendation(
        SizedSystem system,
        Optional<ByChance> byChance,
        Laws laws,
        boolean isMovedIndoors,
        Optional<Derived> moreDrivingHours) {
    private static final double MOST_DAYS = 5;
    private static final NamedOperation FEWEST = NamedOperation.of(
            NamedOperation.Kind.BEST_OF,
            "the fewest half hours up to h_may with which a system holds whose bank is not one of more than five days; h_may"
                    + " where none does",
            Source.commonPractice());
    private static final double NOTABLE_COLD_HOURS = 0.1;

    /** Judged by days of autonomy and the worst month. */
    public static Recommendation of(SizedSystem system) {
        return new Recommendation(system, Optional.empty(), Laws.of(system), false, Optional.empty());
    }

    /** Judged by the chance that was found for it. */
    public static Recommendation of(SizedSystem system, ByChance found) {
        return new Recommendation(
                system, Optional.of(found), Laws.of(system, byChance(found)), false, Optional.empty());
    }

    private static List<Law> byChance(ByChance found) {
        ChanceDemands asked = found.demands();
        Borne borne = found.borne();
        List<Law> laws = new ArrayList<>();
        laws.add(ChanceLaws.accepted(borne.chance().value(), asked.accepted()));
        borne.vitalReserveHours()
                .ifPresent(any -> laws.add(ChanceLaws.vital(borne.chance().value())));
        asked.comfortShare().ifPresent(wanted -> borne.served()
                .comfortShare()
                .ifPresent(served -> laws.add(ChanceLaws.comfort(wanted, served))));
        if (asked.mustBalance()) {
            laws.add(ChanceLaws.balance(
                    borne.balance().dailyWh(), borne.balance().evenWh()));
        }
        return laws;
    }

    private Optional<ChanceVerdict> verdict() {
        return byChance.map(found -> new ChanceVerdict(system, found));
    }

    /** The same, its bank moved there by the search. */
    public Recommendation movedIndoors() {
        return new Recommendation(system, byChance, laws, true, moreDrivingHours);
    }

    /** The same on a trip with some more hours of driving each day [h]. */
    public Recommendation drivingMore(double hours) {
        Derived more = FEWEST.value(
                "driving hours per day, more than asked",
                hours,
                Unit.HOUR,
                Derived.given(
                                "driving hours per day, more if need be",
                                target().mayDriveHours().orElseThrow(),
                                Unit.HOUR,
                                target().at("mayDriveHours"))
                        .as("h_may"));
        return new Recommendation(
                system,
                byChance.map(found -> found.telling(Parameter.number("moreDriving", more))),
                laws,
                isMovedIndoors,
                Optional.of(more));
    }

    private Target target() {
        return system.site().brief().target();
    }

    /** Whether all holds and no bank of many days makes up for what the trip does not bring in. */
    public boolean isSensible() {
        return feasible() && system.battery().bank().autonomyDays().value() <= MOST_DAYS;
    }

    /** Whether the cold keeps charge out of its bank for more than minutes of a usual trip. */
    public boolean isKeptCold() {
        return byChance.map(found -> found.borne().coldHours().value() >= NOTABLE_COLD_HOURS)
                .orElse(false);
    }

    /** This one, unless another holds and it does not, or is lighter and holds as well. */
    public Recommendation orBetter(Recommendation other) {
        if (feasible() != other.feasible()) {
            return feasible() ? this : other;
        }
        return other.system.mass().massKg().value() < system.mass().massKg().value() ? other : this;
    }

    public boolean feasible() {
        return shortfalls().isEmpty();
    }

    /** Empty when it fits. */
    public List<Shortfall> shortfalls() {
        return laws.shortfalls();
    }

    /** Defaults that are no numbers. */
    public List<Assumption> choices() {
        List<Assumption> choices =
                new ArrayList<>(verdict().map(ChanceVerdict::choices).orElseGet(system::choices));
        if (isMovedIndoors) {
            choices.add(indoors());
        }
        return choices;
    }

    private Assumption indoors() {
        return Assumption.choice(
                system.site().brief().system().bankPlacement().at("where"),
                "place of the battery",
                Compartment.CABIN.code(),
                "Frost would keep charge out of it elsewhere; in the heated living space less battery is enough",
                Source.commonPractice());
    }

    /** What whoever builds it must know. */
    public List<Caution> cautions() {
        Set<Caution> cautions = new LinkedHashSet<>(laws.cautions());
        cautions.addAll(verdict().map(ChanceVerdict::cautions).orElseGet(system::cautions));
        return List.copyOf(cautions);
    }
}
