package wayside.sizing.charging;

import wayside.sizing.brief.SystemWishes;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * A charger between the vehicle's alternator and the bank. An alternator's label is not its charge rate: hot it gives a
 * quarter less, at idle a third to a half, and the vehicle wants its part. The charger is therefore held to a share of
 * the label: {@code I <= s I_alt V_alt eta / V_c}. Common practice, no source.
 *
 * @param chargerCurrentA rated output at the bank [A]
 * @param limitA the most that the alternator may be asked for, at the bank [A]
 * @param chargerPowerW at the bank's charging voltage [W]
 * @param takenPowerW of that, what the bank takes [W]
 */
public record AlternatorCharger(Derived chargerCurrentA, Derived limitA, Derived chargerPowerW, Derived takenPowerW) {
    private static final double ALTERNATOR_A = 120;
    private static final double ALTERNATOR_V = 13.5;
    private static final double USABLE_SHARE = 0.5;
    private static final double EFFICIENCY = 0.92;
    private static final Expression NEEDED = Expression.commonPractice("I_need = E_in / (max(h, h_min) V_c)")
            .with("h_min", ChargerNeed.SHORTEST_HOURS, Unit.HOUR);
    private static final Expression LIMIT = Expression.commonPractice("I_max = I_alt s V_alt eta / V_c");
    private static final Expression MOST = Expression.commonPractice("I_most = min(I_max, P_max / V_c)");
    private static final Expression ENERGY = Expression.definition("E = P_in h");
    private static final Expression INPUT_CURRENT = Expression.definition("I = P / (eta V_alt)");

    /**
     * @param need of the bank
     * @param hoursPerDay driving [h], above 0
     * @param wishes the charger and the alternator, as far as they are known
     */
    public static AlternatorCharger of(ChargerNeed need, Derived hoursPerDay, SystemWishes wishes) {
        Derived limit = limit(need, wishes);
        Derived current = wishes.alternatorChargerA().isPresent()
                ? Derived.given(
                        "alternator charger: rated output",
                        wishes.alternatorChargerA().getAsDouble(),
                        Unit.AMPERE,
                        wishes.at("alternatorChargerA"))
                : chosen(need, hoursPerDay, limit);
        Derived power = need.powerW(need.whose() + "alternator charger: power at the bank", current);
        Derived taken = need.takenW(need.whose() + "alternator charger: power that the bank takes", power);
        return new AlternatorCharger(current, limit, power, taken);
    }

    /**
     * Into the bank in a day's driving [Wh].
     *
     * @param stay whose day: {@code stay 2}
     * @param hoursPerDay driving [h]
     */
    public Derived energyPerDayWh(String stay, Derived hoursPerDay) {
        return ENERGY.value(
                stay + ": energy of the alternator charger each day",
                Unit.WATT_HOUR,
                takenPowerW.as("P_in"),
                hoursPerDay.as("h"));
    }

    /** What the vehicle's wiring must bring to the charger [A]. */
    public Derived inputCurrentA() {
        return INPUT_CURRENT.value(
                "alternator charger: current from the alternator",
                Unit.AMPERE,
                chargerPowerW.as("P"),
                efficiency().as("eta"),
                voltage().as("V_alt"));
    }

    private static Derived chosen(ChargerNeed need, Derived hoursPerDay, Derived limit) {
        Derived needed = NEEDED.value(
                need.whose() + "alternator charger: output that refills the bank in the day's driving",
                Unit.AMPERE,
                need.refillWh().as("E_in"),
                hoursPerDay.as("h"),
                need.chargingVoltageV().as("V_c"));
        Derived most = MOST.value(
                need.whose() + "alternator charger: most that alternator and bank allow",
                Unit.AMPERE,
                limit.as("I_max"),
                need.acceptedW().as("P_max"),
                need.chargingVoltageV().as("V_c"));
        return CommonRatings.next(need.whose() + "alternator charger: rated output", needed, most);
    }

    private static Derived limit(ChargerNeed need, SystemWishes wishes) {
        Derived rating = Derived.byDefault(
                        "alternator: rating",
                        ALTERNATOR_A,
                        Unit.AMPERE,
                        wishes.at("alternatorRatingA"),
                        "Usual for a van; read it off the alternator's label",
                        Source.commonPractice())
                .unlessGiven(wishes.alternatorRatingA());
        Derived share = Derived.convention(
                "alternator: share that may charge the bank",
                USABLE_SHARE,
                Unit.SHARE,
                "Hot or at idle it gives far less than its label, and the vehicle needs its part",
                Source.commonPractice());
        return LIMIT.value(
                "alternator charger: most that the alternator allows",
                Unit.AMPERE,
                rating.as("I_alt"),
                share.as("s"),
                voltage().as("V_alt"),
                efficiency().as("eta"),
                need.chargingVoltageV().as("V_c"));
    }

    private static Derived voltage() {
        return Derived.convention(
                "alternator: voltage when hot",
                ALTERNATOR_V,
                Unit.VOLT,
                "A 12 V vehicle; hot alternators hold 13.6 V or less",
                Source.commonPractice());
    }

    private static Derived efficiency() {
        return Derived.convention(
                "alternator charger: efficiency",
                EFFICIENCY,
                Unit.SHARE,
                "Converters of this kind give 90 to 95 %",
                Source.commonPractice());
    }
}
