package wayside.sizing.charging;

import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.PartSize;
import wayside.sizing.brief.ShoreChargerSize;
import wayside.sizing.brief.SizesThatExist;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.sizes.NextSize;
import wayside.sizing.sizes.Pieces;
import wayside.sizing.sizes.SizeTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * A charger on shore power: strong enough to put back a day in the hours at the hookup, and an empty bank in a night,
 * but not stronger than the bank takes. Common practice, no source.
 *
 * @param chargerPowerW rated output [W]
 * @param mainsPowerW drawn from the hookup [W]
 * @param takenPowerW of the rated output, what the bank takes [W]
 * @param buyable the chargers that it is; empty when it was given
 */
public record ShoreCharger(
        Derived chargerPowerW, Derived mainsPowerW, Derived takenPowerW, Optional<ChargerRating> buyable) {
    private static final double EFFICIENCY = 0.88;
    private static final double NIGHT_HOURS = 10;
    private static final Expression NEEDED = Expression.commonPractice(
                    "I_need = max(E_in / max(h, h_min), E / n) / V_c")
            .with("h_min", ChargerNeed.SHORTEST_HOURS, Unit.HOUR);
    private static final Expression MOST = Expression.commonPractice("I_most = P_usual / V_c");
    private static final Expression MOST_OF_BOTH =
            Expression.commonPractice("I_most = min(P_usual, eta P_hookup) / V_c");
    private static final Expression FROM_THE_MAINS = Expression.definition("P_mains = P / eta");
    private static final Expression ENERGY = Expression.definition("E = P_in h");
    private static final Expression TAKEN = Expression.definition("P_taken = min(P_in, eta P_hookup)");
    private static final Expression BESIDE_LOADS =
            Expression.commonPractice("E = min(P_in, eta max(0, P_hookup - E_ac / h)) h");

    /**
     * @param need of the bank
     * @param hoursPerDay at the hookup [h], above 0
     * @param wishes the charger, as far as it is known
     * @param hookupW that the hookup gives, where it is known [W]
     */
    public static ShoreCharger of(
            ChargerNeed need, Derived hoursPerDay, SystemWishes wishes, Optional<Derived> hookupW) {
        if (wishes.shoreChargerW().isPresent()) {
            Derived given = Derived.given(
                    "shore charger: rated output",
                    wishes.shoreChargerW().getAsDouble(),
                    Unit.WATT,
                    wishes.at("shoreChargerW"));
            return of(need, given, Optional.empty(), hookupW);
        }
        ChargerRating rating = chosen(need, hoursPerDay, wishes, hookupW);
        Derived power = need.powerW(need.whose() + "shore charger: rated output", rating.currentA());
        return of(need, power, Optional.of(rating), hookupW);
    }

    private static ShoreCharger of(
            ChargerNeed need, Derived power, Optional<ChargerRating> rating, Optional<Derived> hookupW) {
        Derived efficiency = efficiency();
        Derived mains = FROM_THE_MAINS.value(
                "shore charger: power from the mains", Unit.WATT, power.as("P"), efficiency.as("eta"));
        Derived taken = need.takenW(need.whose() + "shore charger: power that the bank takes", power);
        Derived given = hookupW.map(limit -> givenW(taken, limit)).orElse(taken);
        return new ShoreCharger(power, mains, given, rating);
    }

    /** Its output as far as the hookup allows it [W]. */
    public static Derived givenW(Derived powerW, Derived hookupW) {
        return TAKEN.value(
                powerW.label() + ", as far as the hookup allows",
                Unit.WATT,
                powerW.as("P_in"),
                efficiency().as("eta"),
                hookupW.as("P_hookup"));
    }

    private static Derived efficiency() {
        return Derived.convention(
                "shore charger: efficiency",
                EFFICIENCY,
                Unit.SHARE,
                "Mains chargers give 80 to 93 % of what they draw",
                Source.commonPractice());
    }

    /** Part of its output that it can give from what a hookup has left [share]. */
    public static double shareLeft(double outputW, double sparePowerW) {
        return outputW > 0 ? Math.min(1, EFFICIENCY * sparePowerW / outputW) : 0;
    }

    /**
     * Into the bank in a day's hours at the hookup [Wh].
     *
     * @param stay whose day: {@code stay 2}
     * @param hoursPerDay plugged in [h]
     */
    public Derived energyPerDayWh(String stay, Derived hoursPerDay) {
        return ENERGY.value(
                stay + ": energy of the shore charger each day",
                Unit.WATT_HOUR,
                takenPowerW.as("P_in"),
                hoursPerDay.as("h"));
    }

    /**
     * The same on a day on which AC loads hang on the hookup too [Wh].
     *
     * @param hookupW that the hookup gives [W]
     * @param acWh that AC loads take from it [Wh]
     */
    public Derived energyPerDayWh(String stay, Derived hoursPerDay, Derived hookupW, Derived acWh) {
        return BESIDE_LOADS.value(
                stay + ": energy of the shore charger each day",
                Unit.WATT_HOUR,
                takenPowerW.as("P_in"),
                efficiency().as("eta"),
                hookupW.as("P_hookup"),
                acWh.as("E_ac"),
                hoursPerDay.as("h"));
    }

    private static ChargerRating chosen(
            ChargerNeed need, Derived hoursPerDay, SystemWishes wishes, Optional<Derived> hookupW) {
        Derived night = Derived.convention(
                "shore charger: hours to fill an empty bank",
                NIGHT_HOURS,
                Unit.HOUR,
                "Full again after a night at a hookup",
                Source.commonPractice());
        Derived needed = NEEDED.value(
                need.whose() + "shore charger: output that puts back a day at the hookup and an empty bank in a night",
                Unit.AMPERE,
                need.refillWh().as("E_in"),
                hoursPerDay.as("h"),
                need.nominalEnergyWh().as("E"),
                night.as("n"),
                need.chargingVoltageV().as("V_c"));
        Derived most = hookupW.map(limit -> MOST_OF_BOTH.value(
                        need.whose() + "shore charger: most that hookup and bank allow",
                        Unit.AMPERE,
                        need.usualW().as("P_usual"),
                        efficiency().as("eta"),
                        limit.as("P_hookup"),
                        need.chargingVoltageV().as("V_c")))
                .orElseGet(() -> MOST.value(
                        need.whose() + "shore charger: most that the bank takes",
                        Unit.AMPERE,
                        need.usualW().as("P_usual"),
                        need.chargingVoltageV().as("V_c")));
        return ChargerRating.of(
                need.whose() + "shore charger: rated output in amperes", needed, most, thatServe(need, wishes));
    }

    /** Those made for the bus; the usual ones where the ladder has none for it. */
    private static List<Pieces<ShoreChargerSize>> thatServe(ChargerNeed need, SystemWishes wishes) {
        List<Pieces<ShoreChargerSize>> listed = thatServe(need, wishes.sizes());
        return listed.isEmpty() ? thatServe(need, SizeTables.usual()) : listed;
    }

    private static List<Pieces<ShoreChargerSize>> thatServe(ChargerNeed need, SizesThatExist sizes) {
        return Pieces.of(
                sizes.shoreChargers().stream()
                        .filter(size -> size.outputV() == need.busVoltageV().value())
                        .toList(),
                ShoreChargerSize::currentA,
                ShoreChargerSize::mostTogether);
    }

    /** One of the size that a given power would take, to reckon its mass with. */
    public static PartSize like(ChargerNeed need, SystemWishes wishes, double powerW) {
        List<Pieces<ShoreChargerSize>> all = thatServe(need, wishes);
        return NextSize.atLeast(powerW / need.chargingVoltageV().value(), all)
                .orElseGet(() -> all.get(all.size() - 1))
                .size();
    }
}
