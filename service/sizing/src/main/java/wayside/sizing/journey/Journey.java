package wayside.sizing.journey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.Trip;
import wayside.sizing.charging.HookupLimit;
import wayside.sizing.charging.ShoreCharger;
import wayside.sizing.ledger.LedgerDay;
import wayside.sizing.ledger.LedgerHeater;
import wayside.sizing.ledger.LoadHours;
import wayside.sizing.ledger.Weather;
import wayside.sizing.storage.BankPlace;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;

/**
 * A trip made ready once, for all who size or simulate with it. A trip that differs in one thing is derived from it, and keeps
 * all that this thing does not touch.
 *
 * @param trip as asked
 * @param energy what a day takes, as asked
 * @param panel as it was given
 * @param sampling how the runs are drawn
 * @param source of its weather
 * @param place where the bank stands
 * @param uncertainty of the stays' skies
 * @param stays in the order of the trip
 */
public record Journey(
        Trip trip,
        EnergyBrief energy,
        PanelMount panel,
        Sampling sampling,
        WeatherSource source,
        BankPlace place,
        SkyUncertainty uncertainty,
        List<JourneyStay> stays) {
    private static final Comparator<JourneyStay> BY_DEMAND =
            Comparator.comparingDouble(stay -> stay.budget().dailyTotalWh().value());

    public Journey {
        stays = List.copyOf(stays);
    }

    /** The trip that a system is sized for, in weather drawn from what its months are like. */
    public static Journey of(SystemBrief brief) {
        return of(
                brief.trip(),
                brief.energy(),
                brief.system().panel(),
                brief.system().bankPlacement(),
                brief.sampling(),
                WeatherSource.DRAWN);
    }

    /** The trip that a system must last. */
    public static Journey of(EnduranceBrief brief, WeatherSource source) {
        return of(
                brief.trip(), brief.energy(), brief.system().panel(), brief.bankPlacement(), brief.sampling(), source);
    }

    private static Journey of(
            Trip trip,
            EnergyBrief energy,
            PanelMount panel,
            BankPlacement placement,
            Sampling sampling,
            WeatherSource source) {
        BankPlace place = BankPlace.of(placement);
        List<JourneyStay> stays = JourneyStay.all(trip, energy, panel, place);
        SkyUncertainty uncertainty = SkyUncertainty.of(
                sampling, stays.stream().map(JourneyStay::month).toList());
        return new Journey(trip, energy, panel, sampling, source, place, uncertainty, stays);
    }

    /** The same trip with other loads, or another use of the inverter. */
    public Journey taking(EnergyBrief other) {
        return new Journey(trip, other, panel, sampling, source, place, uncertainty, JourneyStay.taking(other, stays));
    }

    /** The same trip with some more hours of driving and at a hookup each day, as far as a day has them [h]. */
    public Journey travelling(double moreDriving, double moreHookup) {
        List<JourneyStay> travelling = stays.stream()
                .map(stay -> stay.travelling(moreDriving, moreHookup))
                .toList();
        return with(moreHookup > 0 ? JourneyStay.taking(energyThroughTheInverter(), travelling) : travelling);
    }

    /** The same trip with the bank at another place. */
    public Journey in(BankPlacement placement) {
        BankPlace other = BankPlace.of(placement);
        List<JourneyStay> moved = JourneyStay.in(other, energy, stays);
        return new Journey(trip, energy, panel, sampling, source, other, uncertainty, moved);
    }

    /** The same trip with so many nights, as {@link Trip#lasting} has it. */
    public Journey lasting(int nights) {
        Trip lasting = trip.lasting(nights);
        List<JourneyStay> kept = new ArrayList<>();
        for (int i = 0; i < lasting.stays().size(); i++) {
            kept.add(stays.get(i).staying(lasting.stays().get(i)));
        }
        return new Journey(lasting, energy, panel, sampling, source, place, uncertainty, kept);
    }

    private Journey with(List<JourneyStay> other) {
        return new Journey(trip, energy, panel, sampling, source, place, uncertainty, other);
    }

    /** What a day takes, through the inverter as it stands when loads change that it was chosen for. */
    public EnergyBrief energyThroughTheInverter() {
        return energy.through(stays.get(0).budget().inverterAsItIs(energy.inverter()));
    }

    /** Nominal voltage of the bus [V]. */
    public Derived busVoltageV() {
        return stays.get(0).budget().busVoltageV();
    }

    /** The sun of the trip on its panel, run by run. */
    public Weather weather() {
        return weather(panel);
    }

    /** The same skies over another panel. */
    public Weather weather(PanelMount other) {
        return source.over(this, other);
    }

    /**
     * The days of the trip, for the ledger.
     *
     * @param alternatorW at the bank while driving [W]
     * @param shoreW at the bank while plugged in [W]
     */
    public List<LedgerDay> days(double alternatorW, double shoreW) {
        double givenW = shoreW * ShoreCharger.shareLeft(shoreW, hookupW().value());
        return stays.stream().map(stay -> stay.day(alternatorW, givenW)).toList();
    }

    /** What each load wants of the battery on a day of each stay, in the order of the load list. */
    public List<List<LoadHours>> loadHours() {
        return stays.stream().map(JourneyStay::loadHours).toList();
    }

    /** What a hookup of the trip gives [W]. */
    public Derived hookupW() {
        return HookupLimit.powerW(energy.mains());
    }

    /** The bank's heater, for the ledger. */
    public LedgerHeater heater() {
        return place.heating()
                .map(heating -> new LedgerHeater(
                        heating.powerW().value(),
                        heating.riseK().value(),
                        heating.onBelowC().value(),
                        heating.offAboveC().value(),
                        place.lagHours().value()))
                .orElse(LedgerHeater.NONE);
    }

    /** Where the bank stands, as inputs of a simulation. */
    public List<Input> warmth() {
        List<Input> inputs = new ArrayList<>(List.of(place.lagHours().as("tau")));
        stays.forEach(stay -> inputs.add(stay.bank().warmerK().as("dT")));
        place.heating().ifPresent(heating -> {
            inputs.add(heating.powerW().as("P_heater"));
            inputs.add(heating.riseK().as("dT_heater"));
            inputs.add(heating.onBelowC().as("T_on"));
            inputs.add(heating.offAboveC().as("T_off"));
        });
        return inputs;
    }

    /** All that the trip takes out of the bus [Wh]. */
    public double takenWh() {
        return stays.stream().mapToDouble(JourneyStay::takenWh).sum();
    }

    /** The stay whose day takes most. */
    public JourneyStay highestDemand() {
        return highestDemandOf(stays.stream()).orElseThrow();
    }

    /** Of the stays on which the engine runs. */
    public Optional<JourneyStay> highestDemandDriving() {
        return highestDemandOf(stays.stream().filter(stay -> stay.drivingHours().value() > 0));
    }

    /** Of the stays at a hookup. */
    public Optional<JourneyStay> highestDemandHookedUp() {
        return highestDemandOf(stays.stream().filter(stay -> stay.hookupHours().value() > 0));
    }

    private static Optional<JourneyStay> highestDemandOf(Stream<JourneyStay> some) {
        return some.max(BY_DEMAND);
    }

    /** The stay with the coldest bank. */
    public JourneyStay coldest() {
        return stays.stream()
                .min(Comparator.comparingDouble(stay -> stay.bank().coldestC()))
                .orElseThrow();
    }

    /** The stay with the hottest afternoon. */
    public JourneyStay hottest() {
        return stays.stream()
                .max(Comparator.comparingDouble(JourneyStay::hottestAfternoonC))
                .orElseThrow();
    }

    /** Where the bank stands, where sky and air come from, when they are ours, and whether AC loads hang on the hookup. */
    public List<Assumption> choices() {
        List<Assumption> choices = new ArrayList<>(place.choices());
        stays.forEach(stay -> choices.addAll(stay.month().choices()));
        if (energy.mains().passThrough().isEmpty()
                && stays.stream().anyMatch(stay -> stay.budget().relief().isPresent())) {
            choices.add(Assumption.choice(
                    energy.mains().at("passThrough"),
                    "AC loads run straight off the hookup while plugged in",
                    "true",
                    "A transfer switch or an inverter that lets the hookup through is usual",
                    Source.commonPractice()));
        }
        return choices;
    }
}
