package wayside.sizing.chance;

import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Objective;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Target;
import wayside.sizing.endurance.Endurance;
import wayside.sizing.endurance.EnduranceMessages;
import wayside.sizing.endurance.WhatHelps;
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
    private static final double GROWTH = 1.03;

    private static final NamedOperation FOUND = NamedOperation.of(
            NamedOperation.Kind.BEST_OF,
            "of the pairs of bank and array that run flat with a chance of p or less, the best by the objective; where the"
                    + " confirming runs, which are others, say otherwise the bank grows by 3 % until they agree",
            Source.commonPractice());

    private final ChanceTrip trip;
    private final SizedSystem plain;
    private final Target target;
    private final Derived accepted;

    private ChanceSearch(ChanceTrip trip, SizedSystem plain, double accepted) {
        this.trip = trip;
        this.plain = plain;
        target = trip.site().brief().target();
        this.accepted = Derived.given(
                "accepted chance of running flat", accepted, Unit.SHARE, target.at("chanceOfRunningFlat"));
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
        List<double[]> pairs = new ChanceCurve(trip, accepted.value()).pairs(plainArrayW);
        if (pairs.isEmpty()) {
            pairs = List.of(given(plainArrayW));
        }
        List<CurvePoint> curve = ChancePick.points(pairs, trip.site().chemistry(), target);
        Objective objective = ChancePick.objective(target);
        CurvePoint best = ChancePick.best(curve, objective);
        return confirmed(curve, objective, best);
    }

    /** What the brief gives, or the most that was tried beside it. */
    private double[] given(double plainArrayW) {
        SystemWishes wishes = trip.site().brief().system();
        return new double[] {
            wishes.nominalEnergyWh()
                    .orElse(plain.battery().bank().nominalEnergyWh().value()),
            wishes.solarPowerW().orElse(ChanceCurve.largestArrayW(plainArrayW))
        };
    }

    /** The pair was found in other runs; if it runs flat too often in the trip's own, the bank grows until it does not. */
    private ByChance confirmed(List<CurvePoint> curve, Objective objective, CurvePoint best) {
        double bankWh = best.nominalEnergyWh();
        Derived arrayW = found("rated power of the array", best.solarPowerW(), Unit.WATT);
        Derived nominal = found("rated energy of the bank", bankWh, Unit.WATT_HOUR);
        Endurance.Chance chance = chance(nominal, arrayW);
        boolean free = trip.site().brief().system().nominalEnergyWh().isEmpty();
        for (int i = 0; i < MOST_STEPS && free && chance.value().value() > accepted.value(); i++) {
            bankWh = ChanceCurve.roundUp(bankWh * GROWTH);
            nominal = found("rated energy of the bank", bankWh, Unit.WATT_HOUR);
            chance = chance(nominal, arrayW);
        }
        List<WhatHelps> helps = ChanceChanges.ranked(trip, bankWh, arrayW.value(), chance.value());
        return new ByChance(
                accepted,
                chance,
                trip.runs(),
                trip.site().brief().sampling().weatherSeed(),
                curve,
                objective,
                new SizePair(Optional.of(nominal), Optional.of(arrayW)),
                ruleOfThumb(),
                helps,
                EnduranceMessages.advice(
                        AdviceCode.RUNS_FLAT_WHEN_OLD,
                        nominal,
                        arrayW,
                        chance.value().value(),
                        helps));
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
