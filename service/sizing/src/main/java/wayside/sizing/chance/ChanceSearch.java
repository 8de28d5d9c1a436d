package wayside.sizing.chance;

import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Objective;
import wayside.sizing.brief.Target;
import wayside.sizing.endurance.Endurance;
import wayside.sizing.endurance.EnduranceMessages;
import wayside.sizing.endurance.WhatHelps;
import wayside.sizing.system.BatteryPack;
import wayside.sizing.system.BuyableArray;
import wayside.sizing.system.BuyableBank;
import wayside.sizing.system.RuleOfThumb;
import wayside.sizing.system.SizePair;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.AdviceCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Sizes bank and array so that the trip runs flat no more often than the customer accepts. */
public final class ChanceSearch {
    private static final int MOST_STEPS = 16;

    private static final NamedOperation FOUND = NamedOperation.of(
            NamedOperation.Kind.BEST_OF,
            "of the pairs of whole batteries and whole modules that run flat with a chance of p or less, the best by the"
                    + " objective; where the confirming runs, which are others, say otherwise the next larger bank until"
                    + " they agree",
            Source.commonPractice());

    private static final NamedOperation EXACT = NamedOperation.of(
            NamedOperation.Kind.ROOT,
            "the smallest bank, of any size, that runs flat with a chance of p or less beside the array that was chosen, not"
                    + " below the next smaller that exists; to 10 Wh",
            Source.commonPractice());

    private final ChanceTrip trip;
    private final ChanceCurve curve;
    private final SizedSystem plain;
    private final Target target;
    private final Derived accepted;

    private ChanceSearch(ChanceTrip trip, SizedSystem plain, double accepted) {
        this.trip = trip;
        this.plain = plain;
        target = trip.site().brief().target();
        this.accepted = Derived.given(
                "accepted chance of running flat", accepted, Unit.SHARE, target.at("chanceOfRunningFlat"));
        curve = new ChanceCurve(trip, accepted);
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
        double plainArrayW = plain.array().map(a -> a.powerW().value()).orElse(0.0);
        List<ChancePair> pairs = curve.pairs(plainArrayW);
        boolean none = pairs.isEmpty();
        if (none) {
            pairs = List.of(curve.most(
                    plainArrayW, plain.battery().bank().nominalEnergyWh().value()));
        }
        List<CurvePoint> points = ChancePick.points(pairs, trip.site().chemistry(), target);
        Objective objective = ChancePick.objective(target);
        return confirmed(points, objective, pairs.get(ChancePick.best(points, objective)), none);
    }

    /** The pair was found in other runs; if it runs flat too often in the trip's own, the bank grows until it does not. */
    private ByChance confirmed(List<CurvePoint> points, Objective objective, ChancePair best, boolean none) {
        SizePair pair = built(best, Optional.empty());
        Endurance.Chance chance = chance(pair);
        for (int i = 0; i < MOST_STEPS && chance.value().value() > accepted.value(); i++) {
            Optional<BatteryPack> larger = best.pack().flatMap(curve::above);
            if (larger.isEmpty()) {
                break;
            }
            best = new ChancePair(larger.get().energyWh(), larger, best.arrayW(), best.modules());
            pair = built(best, Optional.empty());
            chance = chance(pair);
        }
        if (!none && best.pack().isPresent()) {
            pair = built(best, Optional.of(exact(best)));
        }
        List<WhatHelps> helps = ChanceChanges.ranked(trip, best.bankWh(), best.arrayW(), chance.value());
        return new ByChance(
                accepted,
                chance,
                trip.coldHours(pair),
                trip.runs(),
                trip.site().brief().sampling().weatherSeed(),
                points,
                objective,
                pair,
                ruleOfThumb(),
                helps,
                EnduranceMessages.advice(
                        AdviceCode.RUNS_FLAT_WHEN_OLD,
                        pair.nominalEnergyWh().orElseThrow(),
                        pair.solarPowerW().orElseThrow(),
                        chance.value().value(),
                        helps));
    }

    private Derived exact(ChancePair found) {
        return EXACT.value(
                "rated energy needed", curve.exactWh(found.arrayW(), found.bankWh()), Unit.WATT_HOUR, accepted.as("p"));
    }

    private SizePair built(ChancePair found, Optional<Derived> exactWh) {
        Optional<BuyableBank> bank =
                found.pack().map(pack -> BuyableBank.of(trip.site().chemistry(), pack, FOUND, accepted.as("p")));
        Optional<BuyableArray> array =
                found.modules().map(modules -> BuyableArray.of(trip.site(), modules, FOUND, accepted.as("p")));
        return new SizePair(
                Optional.of(bank.map(BuyableBank::energyWh)
                        .orElseGet(() -> found("rated energy of the bank", found.bankWh(), Unit.WATT_HOUR))),
                Optional.of(array.map(BuyableArray::powerW)
                        .orElseGet(() -> found("rated power of the array", found.arrayW(), Unit.WATT))),
                bank,
                array,
                exactWh);
    }

    private Endurance.Chance chance(SizePair pair) {
        return chance(pair.nominalEnergyWh().orElseThrow(), pair.solarPowerW().orElseThrow());
    }

    private Endurance.Chance chance(Derived nominal, Derived arrayW) {
        return trip.chance(trip.scenario(nominal.value(), arrayW.value()), "", nominal, Optional.of(arrayW));
    }

    private Derived found(String label, double value, Unit unit) {
        return FOUND.value(label, value, unit, accepted.as("p"));
    }

    private Optional<Derived> ruleOfThumb() {
        RuleOfThumb thumb = plain.ruleOfThumb();
        double solarW = thumb.solarPowerW().map(Derived::value).orElse(0.0);
        return Optional.of(trip.chance(
                        trip.scenario(thumb.nominalEnergyWh().value(), solarW),
                        "rule of thumb: ",
                        thumb.nominalEnergyWh(),
                        thumb.solarPowerW())
                .value());
    }
}
