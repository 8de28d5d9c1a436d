package wayside.sizing.charging;

import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.AlternatorChargerSize;
import wayside.sizing.brief.PartSize;
import wayside.sizing.brief.SizesThatExist;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Vehicle;
import wayside.sizing.sizes.NextSize;
import wayside.sizing.sizes.Pieces;
import wayside.sizing.sizes.SizeTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.ShortfallCode;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * A charger between the vehicle's alternator and the bank. An alternator's label is not its charge rate: hot it gives a
 * quarter less, at idle a third to a half, and the vehicle wants its part. The charger is therefore held to a share of
 * the label: {@code I <= s I_alt V_alt eta / V_c}. Common practice, no source.
 *
 * <p>Source of V_alt: ISO 8854 states a rating at 13.5 V (12 V nets) or 27.0 V (24 V nets), as quoted by secondary pages.
 *
 * @param chargerCurrentA rated output at the bank [A]
 * @param vehicle whose alternator it is
 * @param limitA the most that the alternator may be asked for, at the bank [A]
 * @param chargerPowerW at the bank's charging voltage [W]
 * @param takenPowerW of that, what the bank takes [W]
 * @param buyable the chargers that it is; empty when it was given
 */
public record AlternatorCharger(
        Vehicle vehicle,
        Derived chargerCurrentA,
        Derived limitA,
        Derived chargerPowerW,
        Derived takenPowerW,
        Optional<ChargerRating> buyable) {
    private static final double ALTERNATOR_A = 120;
    private static final double ALTERNATOR_V = 13.5;
    private static final double VEHICLE_V = 12;
    private static final double USABLE_SHARE = 0.5;
    private static final double EFFICIENCY = 0.92;
    private static final Expression NEEDED = Expression.commonPractice("I_need = E_in / (max(h, h_min) V_c)")
            .with("h_min", ChargerNeed.SHORTEST_HOURS, Unit.HOUR);
    private static final Expression LIMIT = Expression.commonPractice("I_max = I_alt s V_alt eta / V_c");
    private static final Expression MOST = Expression.commonPractice("I_most = min(I_max, P_usual / V_c)");
    private static final Expression ENERGY = Expression.definition("E = P_in h");
    private static final Expression USABLE = Expression.commonPractice("I = I_alt s");
    private static final Expression VOLTAGE = Expression.definition("V_alt = V_12 V / 12");
    private static final Expression INPUT_CURRENT = Expression.definition("I = P / (eta V_alt)");

    /**
     * The charger that was given or, when the alternator allows the smallest that is made, the one that fits.
     *
     * @param need of the bank
     * @param hoursPerDay driving [h], above 0
     * @param wishes the charger and the alternator, as far as they are known
     * @param foundA the output to look for [A]; that which puts back a day while driving if empty
     */
    public static Optional<AlternatorCharger> find(
            ChargerNeed need, Derived hoursPerDay, SystemWishes wishes, Optional<Derived> foundA) {
        Derived limit = limit(need, wishes.vehicle());
        if (wishes.alternatorChargerA().isPresent()) {
            Derived given = Derived.given(
                    "alternator charger: rated output",
                    wishes.alternatorChargerA().getAsDouble(),
                    Unit.AMPERE,
                    wishes.at("alternatorChargerA"));
            return Optional.of(of(need, wishes, given, limit, Optional.empty()));
        }
        List<Pieces<AlternatorChargerSize>> all = thatServe(need, wishes);
        if (all.stream().noneMatch(one -> one.total() <= limit.value())) {
            return Optional.empty();
        }
        Derived needed = foundA.orElseGet(() -> refilling(need, hoursPerDay));
        ChargerRating rating = chosen(need, needed, limit, all);
        return Optional.of(of(need, wishes, rating.currentA(), limit, Optional.of(rating)));
    }

    private static AlternatorCharger of(
            ChargerNeed need, SystemWishes wishes, Derived current, Derived limit, Optional<ChargerRating> rating) {
        Derived power = need.powerW(need.whose() + "alternator charger: power at the bank", current);
        Derived taken = need.takenW(need.whose() + "alternator charger: power that the bank takes", power);
        return new AlternatorCharger(wishes.vehicle(), current, limit, power, taken, rating);
    }

    /** Those made for vehicle and bus; the usual ones where the ladder has none for them. */
    private static List<Pieces<AlternatorChargerSize>> thatServe(ChargerNeed need, SystemWishes wishes) {
        List<Pieces<AlternatorChargerSize>> listed = thatServe(need, wishes, wishes.sizes());
        return listed.isEmpty() ? thatServe(need, wishes, SizeTables.usual()) : listed;
    }

    private static List<Pieces<AlternatorChargerSize>> thatServe(
            ChargerNeed need, SystemWishes wishes, SizesThatExist sizes) {
        double vehicleV = vehicleVoltageV(wishes.vehicle()).value();
        double busV = need.busVoltageV().value();
        return Pieces.of(
                sizes.alternatorChargers().stream()
                        .filter(size -> size.inputV() == vehicleV && size.outputV() == busV)
                        .toList(),
                AlternatorChargerSize::currentA,
                AlternatorChargerSize::mostTogether);
    }

    /** One of the size that a given current would take, to reckon its mass with. */
    public static PartSize like(ChargerNeed need, SystemWishes wishes, double currentA) {
        List<Pieces<AlternatorChargerSize>> all = thatServe(need, wishes);
        return NextSize.atLeast(currentA, all)
                .orElseGet(() -> all.get(all.size() - 1))
                .size();
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

    /** What it takes out of the alternator [A]. */
    public Derived inputCurrentA() {
        return INPUT_CURRENT.value(
                "alternator charger: current from the alternator",
                Unit.AMPERE,
                chargerPowerW.as("P"),
                efficiency().as("eta"),
                voltage(vehicle).as("V_alt"));
    }

    /** What the alternator may give for it [A]. */
    public Derived usableCurrentA() {
        return USABLE.value(
                "alternator: current that may charge the bank",
                Unit.AMPERE,
                rating(vehicle).as("I_alt"),
                share().as("s"));
    }

    /** A given charger that asks the alternator for more than its share. */
    public Optional<Shortfall> shortfall() {
        if (chargerCurrentA.value() <= limitA.value()) {
            return Optional.empty();
        }
        Derived usable = usableCurrentA();
        return Optional.of(new Shortfall(
                Message.of(
                        ShortfallCode.ALTERNATOR_OVERLOADED,
                        Parameter.number("asked", inputCurrentA()),
                        Parameter.number("usable", usable),
                        Parameter.number("charger", Math.floor(limitA.value()), Unit.AMPERE)),
                inputCurrentA(),
                usable));
    }

    /** Nominal voltage of the vehicle's net [V]. */
    public static Derived vehicleVoltageV(Vehicle vehicle) {
        return Derived.byDefault(
                        "vehicle: nominal voltage",
                        VEHICLE_V,
                        Unit.VOLT,
                        vehicle.at("voltageV"),
                        "Vans have 12 V, trucks 24 V",
                        Source.commonPractice())
                .unlessGiven(vehicle.voltageV());
    }

    /** What those put out that the alternator allows, by rising output [A]. */
    public static List<Double> outputsA(ChargerNeed need, SystemWishes wishes) {
        double limit = limit(need, wishes.vehicle()).value();
        return thatServe(need, wishes).stream()
                .map(Pieces::total)
                .filter(total -> NextSize.reaches(limit, total))
                .distinct()
                .sorted()
                .toList();
    }

    private static Derived refilling(ChargerNeed need, Derived hoursPerDay) {
        return NEEDED.value(
                need.whose() + "alternator charger: output that refills the bank in the day's driving",
                Unit.AMPERE,
                need.refillWh().as("E_in"),
                hoursPerDay.as("h"),
                need.chargingVoltageV().as("V_c"));
    }

    private static ChargerRating chosen(
            ChargerNeed need, Derived needed, Derived limit, List<Pieces<AlternatorChargerSize>> all) {
        Derived most = MOST.value(
                need.whose() + "alternator charger: most that alternator and bank allow",
                Unit.AMPERE,
                limit.as("I_max"),
                need.usualW().as("P_usual"),
                need.chargingVoltageV().as("V_c"));
        return ChargerRating.of(need.whose() + "alternator charger: rated output", needed, most, all);
    }

    private static Derived limit(ChargerNeed need, Vehicle vehicle) {
        return LIMIT.value(
                "alternator charger: most that the alternator allows",
                Unit.AMPERE,
                rating(vehicle).as("I_alt"),
                share().as("s"),
                voltage(vehicle).as("V_alt"),
                efficiency().as("eta"),
                need.chargingVoltageV().as("V_c"));
    }

    private static Derived rating(Vehicle vehicle) {
        return Derived.byDefault(
                        "alternator: rating",
                        ALTERNATOR_A,
                        Unit.AMPERE,
                        vehicle.at("alternatorRatingA"),
                        "Usual for a van; read it off the alternator's label",
                        Source.commonPractice())
                .unlessGiven(vehicle.alternatorRatingA());
    }

    private static Derived share() {
        return Derived.convention(
                "alternator: share that may charge the bank",
                USABLE_SHARE,
                Unit.SHARE,
                "Hot or at idle it gives far less than its label, and the vehicle needs its part",
                Source.commonPractice());
    }

    private static Derived voltage(Vehicle vehicle) {
        Derived of12 = Derived.convention(
                "alternator: voltage when hot, of a 12 V vehicle",
                ALTERNATOR_V,
                Unit.VOLT,
                "Hot alternators hold 13.6 V or less; twice that in a 24 V vehicle",
                Source.commonPractice());
        return VOLTAGE.value(
                "alternator: voltage when hot",
                Unit.VOLT,
                of12.as("V_12"),
                vehicleVoltageV(vehicle).as("V"));
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
