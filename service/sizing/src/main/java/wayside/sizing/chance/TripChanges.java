package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import wayside.sizing.brief.Compartment;
import wayside.sizing.chance.ChancePair.ArrayTried;
import wayside.sizing.chance.ChancePair.BankTried;
import wayside.sizing.journey.HookupNights;
import wayside.sizing.journey.Journey;
import wayside.sizing.trace.ChangeCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The smallest changes to a trip with which the bank by days of autonomy is enough by chance too: some more driving, nights at a
 * hookup, fewer nights, a warmer place of the bank. Each is simulated; one step less of it is not enough.
 */
final class TripChanges {
    /** More than this nobody drives day after day. */
    private static final int MOST_HALF_HOURS = 12;

    private static final double STEP_HOURS = 0.5;
    private static final int RAREST_HOOKUP = 14;
    /** From the evening on until the morning. Common practice, no source. */
    private static final double HOOKUP_HOURS = 12;

    private static final NamedOperation REFERENCE = NamedOperation.of(
            NamedOperation.Kind.BEST_OF,
            "of whole batteries the next that is not below days of autonomy, beside the array that was found and the strongest"
                    + " charger that the alternator allows",
            Source.commonPractice());
    private static final NamedOperation CHANGED = NamedOperation.of(
            NamedOperation.Kind.SIMULATION,
            "share of the same runs that run flat with this change, on this smaller system",
            Source.definition());

    private final ChanceTrip trip;
    private final ChanceDemands demands;
    private final BankTried bank;
    private final ArrayTried array;
    private final List<TripChange> changes = new ArrayList<>();

    private TripChanges(ChanceTrip trip, ChanceDemands demands, BankTried bank, ArrayTried array) {
        this.trip = trip;
        this.demands = demands;
        this.bank = bank;
        this.array = array;
    }

    /**
     * None where the system that was found has no larger bank than days of autonomy ask for, or no such change helps.
     *
     * @param byDaysWh bank by days of autonomy [Wh]
     */
    static Optional<SmallerSystem> find(
            ChanceTrip trip, ChanceDemands demands, ChanceCurve curve, double byDaysWh, ChancePair found) {
        BankTried bank = curve.bankFrom(byDaysWh);
        TripChanges all = new TripChanges(trip, demands, bank, new ArrayTried(found.arrayW(), found.modules()));
        if (bank.energyWh() >= found.bankWh() || all.isEnough(trip)) {
            return Optional.empty();
        }
        all.driving();
        all.hookups();
        all.nights();
        all.place();
        return all.changes.isEmpty() ? Optional.empty() : Optional.of(all.system());
    }

    private SmallerSystem system() {
        OptionalDouble engineA = strongest(trip);
        return new SmallerSystem(
                reference("rated energy of the bank", bank.energyWh(), Unit.WATT_HOUR),
                reference("rated power of the array", array.powerW(), Unit.WATT),
                engineA.isPresent()
                        ? Optional.of(reference("charger on the engine", engineA.getAsDouble(), Unit.AMPERE))
                        : Optional.empty(),
                changes);
    }

    private Derived reference(String label, double value, Unit unit) {
        return REFERENCE.value(
                "smaller system: " + label, value, unit, demands.accepted().as("p"));
    }

    private static OptionalDouble strongest(ChanceTrip on) {
        return on.enginesA().get(on.enginesA().size() - 1);
    }

    private boolean isEnough(ChanceTrip on) {
        return on.isBorne(on.scenario(pair(on)), demands);
    }

    private ChancePair pair(ChanceTrip on) {
        return ChancePair.of(bank, array, strongest(on));
    }

    private void driving() {
        IntFunction<ChanceTrip> longer = steps -> trip.on(trip.journey().travelling(steps * STEP_HOURS, 0));
        least(1, MOST_HALF_HOURS, longer)
                .ifPresent(steps -> add(
                        Message.of(ChangeCode.MORE_DRIVING, Parameter.number("hours", steps * STEP_HOURS, Unit.HOUR)),
                        longer.apply(steps),
                        Optional.of(steps == 1 ? trip : longer.apply(steps - 1))));
    }

    /** The rarest hookup: the steps count down from it. */
    private void hookups() {
        int rarest = Math.min(RAREST_HOOKUP, trip.journey().trip().nights());
        IntFunction<ChanceTrip> oftener =
                steps -> trip.at(HookupNights.of(trip.journey(), HOOKUP_HOURS, rarest + 1 - steps));
        least(1, rarest, oftener)
                .ifPresent(steps -> add(
                        Message.of(
                                ChangeCode.PLUG_IN_EVERY,
                                Parameter.number("nights", rarest + 1 - steps, Unit.COUNT),
                                Parameter.number("hours", HOOKUP_HOURS, Unit.HOUR)),
                        oftener.apply(steps),
                        Optional.of(steps == 1 ? trip : oftener.apply(steps - 1))));
    }

    private void nights() {
        int nights = trip.journey().trip().nights();
        IntFunction<ChanceTrip> shorter = steps -> trip.on(trip.journey().lasting(nights - steps));
        least(1, nights - 1, shorter)
                .ifPresent(steps -> add(
                        Message.of(ChangeCode.SHORTER_TRIP, Parameter.number("nights", nights - steps, Unit.COUNT)),
                        shorter.apply(steps),
                        Optional.of(steps == 1 ? trip : shorter.apply(steps - 1))));
    }

    private void place() {
        Journey journey = trip.journey();
        if (journey.place().compartment() != Compartment.CABIN) {
            ChanceTrip warmer = trip.on(journey.in(journey.place().placement().in(Compartment.CABIN)));
            if (isEnough(warmer)) {
                add(Message.of(ChangeCode.WARMER_BATTERY), warmer, Optional.empty());
            }
        }
        journey.coldest().bank().missingHeater().ifPresent(heater -> {
            ChanceTrip heated = trip.on(journey.in(heater.placement()));
            if (isEnough(heated)) {
                add(
                        Message.of(
                                ChangeCode.HEATED_BATTERY,
                                Parameter.number("power", heater.powerW()),
                                Parameter.number("energy", heater.dayWh())),
                        heated,
                        Optional.empty());
            }
        });
    }

    /** The first of so many steps, each at least as good as the one before, that is enough. */
    private OptionalInt least(int first, int last, IntFunction<ChanceTrip> step) {
        if (last < first || !isEnough(step.apply(last))) {
            return OptionalInt.empty();
        }
        int low = first;
        int high = last;
        while (low < high) {
            int middle = (low + high) / 2;
            if (isEnough(step.apply(middle))) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return OptionalInt.of(high);
    }

    private void add(Message change, ChanceTrip on, Optional<ChanceTrip> stepLess) {
        String code = change.code().code();
        changes.add(new TripChange(
                change,
                chance("chance with " + code + ", on the smaller system", on),
                stepLess.map(
                        less -> chance("chance with one step less of " + code + ", on the smaller system", less))));
    }

    private Derived chance(String label, ChanceTrip on) {
        return CHANGED.value(
                label,
                on.share(on.scenario(pair(on))),
                Unit.SHARE,
                demands.accepted().as("p"));
    }
}
