package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wayside.sizing.brief.Objective;
import wayside.sizing.chance.ChancePair.ArrayTried;
import wayside.sizing.chance.ChancePair.BankTried;
import wayside.sizing.endurance.WhatHelps;
import wayside.sizing.laws.Laws;
import wayside.sizing.system.BuyableArray;
import wayside.sizing.system.BuyableBank;
import wayside.sizing.system.RuleOfThumb;
import wayside.sizing.system.SizePair;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Sizes bank and array so that the trip runs flat no more often than the customer accepts. */
public final class ChanceSearch {
    private static final int MOST_STEPS = 16;

    private static final NamedOperation FOUND = NamedOperation.of(
            NamedOperation.Kind.BEST_OF,
            "of whole batteries, whole modules and chargers on the engine that together run flat with a chance of p or less and"
                    + " hold all laws, the best by the objective, and of those within a fiftieth of it the one with the smallest bank; where the confirming runs, which are others, say otherwise"
                    + " the next larger bank until they agree",
            Source.commonPractice());

    private static final NamedOperation EXACT = NamedOperation.of(
            NamedOperation.Kind.ROOT,
            "the smallest bank, of any size, that meets what is asked beside the array that was chosen, not"
                    + " below the next smaller that exists; to 10 Wh",
            Source.commonPractice());

    private final ChanceTrip trip;
    private final ChanceCurve curve;
    private final SizedSystem plain;
    private final Objective objective;
    private final ChanceDemands demands;

    private ChanceSearch(ChanceTrip trip, SizedSystem plain, double accepted) {
        this.trip = trip;
        this.plain = plain;
        objective = ChancePick.objective(trip.site().brief().target());
        demands = ChanceDemands.of(trip.site().brief(), accepted);
        curve = new ChanceCurve(trip, demands);
    }

    /**
     * The pair and its chance.
     *
     * @param plain the system by days of autonomy, the rule of thumb beside it
     * @return the surest that was tried when none is sure enough, with what the brief gives
     */
    public static ByChance find(SizedSystem plain, double accepted) {
        return new ChanceSearch(new ChanceTrip(plain.site()), plain, accepted).find();
    }

    private ByChance find() {
        List<ChancePair> pairs = curve.pairs(this::cost);
        Optional<Confirmed> sure = confirmed(pairs, this::holds).or(() -> confirmed(pairs, any -> true));
        Confirmed found = sure.orElseGet(() -> closest(pairs));
        SizePair pair = sure.isPresent() && found.pair().pack().isPresent()
                ? built(found.pair(), Optional.of(exact(found.pair())))
                : found.built();
        List<WhatHelps> helps = ChanceChanges.ranked(trip, curve, found.pair(), found.borne());
        Optional<SmallerSystem> smaller = TripChanges.find(
                trip, demands, curve, plain.battery().bank().nominalEnergyWh().value(), found.pair());
        return new ByChance(
                demands,
                found.borne(),
                trip.runs(),
                trip.site().brief().sampling().weatherSeed(),
                found.curve().stream().map(one -> ChancePick.point(trip, one)).toList(),
                objective,
                pair,
                ruleOfThumb(),
                helps,
                smaller,
                ChanceMessages.advice(pair, found.borne(), smaller, helps));
    }

    private double cost(ChancePair pair) {
        return ChancePick.cost(ChancePick.point(trip, pair), objective);
    }

    /** Whether the whole system around a pair holds together, however often it runs flat. */
    private boolean holds(SizePair pair) {
        return Laws.ofItsParts(SizedSystem.of(trip.site(), pair)).shortfalls().isEmpty();
    }

    /**
     * The best of pairs that were found in other runs: where the trip's own runs say otherwise, it and all that have no more than it
     * go up to the next larger bank.
     */
    private Optional<Confirmed> confirmed(List<ChancePair> pairs, Predicate<SizePair> holds) {
        List<ChancePair> open = new ArrayList<>(pairs);
        for (int i = 0; i < MOST_STEPS && !open.isEmpty(); i++) {
            ChancePair best = ChancePick.best(open, this::cost);
            SizePair built = built(best, Optional.empty());
            if (!holds.test(built)) {
                open.remove(best);
                continue;
            }
            Borne borne = trip.borne(best, built);
            if (borne.meets(demands)) {
                return Optional.of(new Confirmed(best, built, borne, open));
            }
            open = open.stream()
                    .flatMap(one -> one.isWithin(best) ? curve.grown(one).stream() : Stream.of(one))
                    .collect(Collectors.toCollection(ArrayList::new));
        }
        return Optional.empty();
    }

    /** Nothing is sure enough. */
    private Confirmed closest(List<ChancePair> pairs) {
        ChancePair most = curve.most(plain.battery().bank().nominalEnergyWh().value());
        SizePair built = built(most, Optional.empty());
        return new Confirmed(most, built, trip.borne(most, built), pairs.isEmpty() ? List.of(most) : pairs);
    }

    /**
     * A pair that the trip's own runs bear out.
     *
     * @param curve on which it lies
     */
    private record Confirmed(ChancePair pair, SizePair built, Borne borne, List<ChancePair> curve) {}

    private Derived exact(ChancePair found) {
        return EXACT.value(
                "rated energy needed",
                curve.exactWh(found),
                Unit.WATT_HOUR,
                demands.accepted().as("p"));
    }

    private SizePair built(ChancePair found, Optional<Derived> exactWh) {
        Optional<BuyableBank> bank = found.pack()
                .map(pack -> BuyableBank.of(
                        trip.site().chemistry(), pack, FOUND, demands.accepted().as("p")));
        Optional<BuyableArray> array = found.modules()
                .map(modules -> BuyableArray.of(
                        trip.site(), modules, FOUND, demands.accepted().as("p")));
        return new SizePair(
                Optional.of(bank.map(BuyableBank::energyWh)
                        .orElseGet(() -> found("rated energy of the bank", found.bankWh(), Unit.WATT_HOUR))),
                Optional.of(array.map(BuyableArray::powerW)
                        .orElseGet(() -> found("rated power of the array", found.arrayW(), Unit.WATT))),
                bank,
                array,
                found.engineA().isPresent()
                        ? Optional.of(found(
                                "output of the charger on the engine, found",
                                found.engineA().getAsDouble(),
                                Unit.AMPERE))
                        : Optional.empty(),
                exactWh);
    }

    private Derived found(String label, double value, Unit unit) {
        return FOUND.value(label, value, unit, demands.accepted().as("p"));
    }

    /** With the chargers that put back a day. */
    private Optional<Derived> ruleOfThumb() {
        RuleOfThumb thumb = plain.ruleOfThumb();
        SizePair pair = new SizePair(
                Optional.of(thumb.nominalEnergyWh()),
                thumb.solarPowerW(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        ChancePair tried = ChancePair.of(
                BankTried.given(thumb.nominalEnergyWh().value()),
                ArrayTried.given(thumb.solarPowerW().map(Derived::value).orElse(0.0)),
                OptionalDouble.empty());
        return Optional.of(new ChanceSteps(trip, "rule of thumb: ", pair)
                .chance(trip.share(trip.scenario(tried)))
                .value());
    }
}
