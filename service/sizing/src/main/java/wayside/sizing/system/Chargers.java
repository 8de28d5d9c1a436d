package wayside.sizing.system;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import wayside.sizing.brief.PartSize;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.charging.AlternatorCharger;
import wayside.sizing.charging.ChargerNeed;
import wayside.sizing.charging.ChargingSource;
import wayside.sizing.charging.RechargeTime;
import wayside.sizing.charging.ShoreCharger;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * What fills the bank besides the sun.
 *
 * @param need of the bank
 * @param alternator when the trip drives or a charger was given
 * @param alternatorWh on a day of the driving stay with the highest demand [Wh]
 * @param alternatorHoursToFull from empty [h]
 * @param shore when the trip plugs in or a charger was given
 * @param shoreWh on a day of the stay at a hookup with the highest demand [Wh]
 * @param shoreHoursToFull from empty [h]
 */
public record Chargers(
        ChargerNeed need,
        Optional<AlternatorCharger> alternator,
        Optional<Derived> alternatorWh,
        Optional<Derived> alternatorHoursToFull,
        Optional<ShoreCharger> shore,
        Optional<Derived> shoreWh,
        Optional<Derived> shoreHoursToFull) {

    /** Those that go with a bank of a size [Wh]. */
    public static Chargers of(Site site, Derived nominalWh) {
        return of(site, nominalWh, "", Optional.empty());
    }

    /**
     * The same for a bank beside the answer's own.
     *
     * @param whose opens their labels
     * @param engineA output of the charger on the engine, where it was looked for [A]; that which puts back a day if empty
     */
    public static Chargers of(Site site, Derived nominalWh, String whose, Optional<Derived> engineA) {
        return of(site, BankChoice.bank(site, nominalWh), whose, engineA);
    }

    static Chargers of(Site site, BatteryBank bank, Optional<Derived> engineA) {
        return of(site, bank, "", engineA);
    }

    /** Outputs of the chargers on the engine that the alternator allows, by rising output [A]; none where none is to be chosen. */
    public static List<Double> engineOutputsA(Site site) {
        SystemWishes wishes = site.brief().system();
        if (wishes.alternatorChargerA().isPresent()
                || site.journey().highestDemandDriving().isEmpty()) {
            return List.of();
        }
        return AlternatorCharger.outputsA(need(site, BankChoice.bank(site, BankChoice.leastWh(site)), ""), wishes);
    }

    private static ChargerNeed need(Site site, BatteryBank bank, String whose) {
        return ChargerNeed.of(
                whose,
                bank.data(),
                bank.nominalEnergyWh(),
                bank.bankVoltageV(),
                bank.busVoltageV(),
                site.journey().highestDemand().budget().dailyTotalWh(),
                site.brief().system().bankRates());
    }

    private static Chargers of(Site site, BatteryBank bank, String whose, Optional<Derived> engineA) {
        SystemWishes wishes = site.brief().system();
        ChargerNeed need = need(site, bank, whose);
        Optional<Derived> driving = hours(
                site.journey().highestDemandDriving().map(JourneyStay::drivingHours), wishes.alternatorChargerA());
        Optional<AlternatorCharger> alternator =
                driving.flatMap(hours -> AlternatorCharger.find(need, hours, wishes, engineA));
        Optional<Derived> limit = Optional.of(site.journey().hookupW());
        Optional<Derived> hookedUp =
                hours(site.journey().highestDemandHookedUp().map(JourneyStay::hookupHours), wishes.shoreChargerW());
        Optional<ShoreCharger> shore = hookedUp.map(hours -> ShoreCharger.of(need, hours, wishes, limit));
        return new Chargers(
                need,
                alternator,
                alternator.map(a -> taken(
                        site,
                        site.journey().highestDemandDriving(),
                        OpenHours::driving,
                        label -> a.energyPerDayWh(label, driving.orElseThrow()))),
                alternator.map(a -> hoursToFull(need, "alternator", a.chargerPowerW())),
                shore,
                shore.map(s ->
                        taken(site, site.journey().highestDemandHookedUp(), OpenHours::hookup, label -> site.journey()
                                .highestDemandHookedUp()
                                .map(stay -> shoreWh(s, stay))
                                .orElseGet(() -> s.energyPerDayWh(label, hookedUp.orElseThrow())))),
                shore.map(s -> hoursToFull(need, "shore", s.chargerPowerW())));
    }

    /** Hours to size by: those of the trip; none when no charger is wanted; a given one needs none. */
    private static Optional<Derived> hours(Optional<Derived> ofTheTrip, OptionalDouble given) {
        if (given.isPresent() && given.getAsDouble() == 0) {
            return Optional.empty();
        }
        return given.isPresent() && ofTheTrip.isEmpty()
                ? Optional.of(Derived.convention(
                        "hours of the trip", 0, Unit.HOUR, "The trip has none of them", Source.definition()))
                : ofTheTrip;
    }

    /** What the shore charger offers on a day of a stay, beside the AC loads that hang on the hookup [Wh]. */
    static Derived shoreWh(ShoreCharger charger, JourneyStay stay) {
        return stay.budget()
                .relief()
                .map(hookup -> charger.energyPerDayWh(
                        stay.label(), stay.hookupHours(), hookup.hookup().limitW(), hookup.acWh()))
                .orElseGet(() -> charger.energyPerDayWh(stay.label(), stay.hookupHours()));
    }

    /** Of what a charger offers in a day, what the bank takes. */
    private static Derived taken(
            Site site,
            Optional<JourneyStay> stay,
            Function<OpenHours, Optional<Derived>> share,
            Function<String, Derived> offered) {
        return stay.map(day -> OpenHours.taken(share.apply(site.openHours(day)), offered.apply(day.label())))
                .orElseGet(() -> offered.apply("trip"));
    }

    private static Derived hoursToFull(ChargerNeed need, String name, Derived powerW) {
        return RechargeTime.of(
                        need,
                        List.of(new ChargingSource(name, powerW)),
                        constant("loads while charging", 0, Unit.WATT),
                        constant("state of charge at the start", 0, Unit.SHARE),
                        constant("state of charge wanted", 1, Unit.SHARE))
                .hours();
    }

    private static Derived constant(String label, double value, Unit unit) {
        return Derived.convention(
                "hours to full: " + label, value, unit, "From empty to full with nothing running", Source.definition());
    }

    /** Of those that are to be bought [kg]. */
    public double massKg() {
        return bought(PartSize::massKg);
    }

    /** Of those that are to be bought [L]. */
    public double volumeL() {
        return bought(size -> size.box().volumeL());
    }

    private double bought(ToDoubleFunction<PartSize> of) {
        return Stream.of(alternator.flatMap(AlternatorCharger::buyable), shore.flatMap(ShoreCharger::buyable))
                .flatMap(Optional::stream)
                .mapToDouble(rating -> rating.count().value() * of.applyAsDouble(rating.size()))
                .sum();
    }
}
