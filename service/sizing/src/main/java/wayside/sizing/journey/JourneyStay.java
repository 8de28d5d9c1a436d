package wayside.sizing.journey;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Trip;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.budget.MainsUse;
import wayside.sizing.charging.ShoreCharger;
import wayside.sizing.ledger.LedgerDay;
import wayside.sizing.ledger.LoadHours;
import wayside.sizing.ledger.UsesByAir;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.solar.sky.SkyMonth;
import wayside.sizing.storage.BankPlace;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Input;

/**
 * A stay of the trip, in figures.
 *
 * @param index in the trip, from 0
 * @param stay as asked
 * @param month what a rated watt of array gives there
 * @param budget what a day takes at its temperature
 * @param uses the same by the hour, for the days that it may meet, without a heater of the bank
 * @param bank how warm the bank is
 * @param drivingHours of a day [h]
 * @param hookupHours of a day [h]
 */
public record JourneyStay(
        int index,
        Stay stay,
        SolarMonth month,
        EnergyBudget budget,
        UsesByAir uses,
        BankWarmth bank,
        Derived drivingHours,
        Derived hookupHours) {
    /** The stays of a trip. */
    static List<JourneyStay> all(Trip trip, EnergyBrief energy, PanelMount panel, BankPlace place) {
        List<JourneyStay> stays = new ArrayList<>();
        List<Derived> hookups = new ArrayList<>();
        trip.stays().forEach(stay -> hookups.add(StayHours.hookup(stay, hookups.size())));
        for (Stay stay : trip.stays()) {
            int index = stays.size();
            SolarMonth month = SolarMonth.of(stay, index, panel);
            BankWarmth bank = BankWarmth.of(label(index) + ": ", month.sky(), place);
            MainsUse mains = HookupOfTrip.of(energy.mains(), energy.loads(), hookups, index);
            EnergyBudget budget = budget(energy, mains, index, month, bank, stays);
            stays.add(new JourneyStay(
                    index,
                    stay,
                    month,
                    budget,
                    uses(energy, mains, month, budget),
                    bank,
                    StayHours.driving(stay, index),
                    hookups.get(index)));
        }
        return stays;
    }

    /** The same stays, whose days take something else. */
    static List<JourneyStay> taking(EnergyBrief energy, List<JourneyStay> stays) {
        List<JourneyStay> others = new ArrayList<>();
        List<Derived> hookups = stays.stream().map(JourneyStay::hookupHours).toList();
        for (JourneyStay stay : stays) {
            MainsUse mains = HookupOfTrip.of(energy.mains(), energy.loads(), hookups, stay.index);
            EnergyBudget budget = budget(energy, mains, stay.index, stay.month, stay.bank, others);
            others.add(new JourneyStay(
                    stay.index,
                    stay.stay,
                    stay.month,
                    budget,
                    uses(energy, mains, stay.month, budget),
                    stay.bank,
                    stay.drivingHours,
                    stay.hookupHours));
        }
        return others;
    }

    /**
     * Stays differ in what a day takes only where a load follows the temperature, the bank is heated, or some are at a hookup.
     */
    private static EnergyBudget budget(
            EnergyBrief energy,
            MainsUse mains,
            int index,
            SolarMonth month,
            BankWarmth bank,
            List<JourneyStay> before) {
        boolean differ = bank.heaterWh().isPresent() || DemandByAir.follows(energy) || !mains.equals(MainsUse.NONE);
        return differ || before.isEmpty()
                ? EnergyBudget.of(energy, month.sky().meanC(), label(index) + ": ", mains, bank.heaterWh())
                : before.get(0).budget;
    }

    private static UsesByAir uses(EnergyBrief energy, MainsUse mains, SolarMonth month, EnergyBudget budget) {
        return DemandByAir.follows(energy)
                ? DemandByAir.of(energy, month.sky(), mains)
                : UsesByAir.steady(HourlyDemand.of(budget));
    }

    JourneyStay travelling(double moreDriving, double moreHookup) {
        return new JourneyStay(
                index,
                stay,
                month,
                budget,
                uses,
                bank,
                StayHours.more(drivingHours, moreDriving),
                StayHours.more(hookupHours, moreHookup));
    }

    /** The same stays with the bank at another place. */
    static List<JourneyStay> in(BankPlace place, EnergyBrief energy, List<JourneyStay> stays) {
        List<Derived> hookups = stays.stream().map(JourneyStay::hookupHours).toList();
        return stays.stream()
                .map(stay ->
                        stay.in(place, energy, HookupOfTrip.of(energy.mains(), energy.loads(), hookups, stay.index)))
                .toList();
    }

    private JourneyStay in(BankPlace place, EnergyBrief energy, MainsUse mains) {
        BankWarmth other = BankWarmth.of(label() + ": ", month.sky(), place);
        EnergyBudget taken = budget(energy, mains, index, month, other, List.of());
        return new JourneyStay(index, stay, month, taken, uses, other, drivingHours, hookupHours);
    }

    /** The same stay with another number of nights. */
    JourneyStay staying(Stay other) {
        return new JourneyStay(index, other, month, budget, uses, bank, drivingHours, hookupHours);
    }

    /** What each load wants of the battery on a day of the mean temperature, in the order of the load list. */
    List<LoadHours> loadHours() {
        return HourlyDemand.loads(budget);
    }

    LedgerDay day(double alternatorW, double shoreW) {
        return new LedgerDay(stay.nights(), uses, drivenByHour(alternatorW), chargedByHour(shoreW))
                .warmerBy(bank.warmerK().value());
    }

    /** What a shore charger gives, as far as the AC loads leave it something, by hour of the day [W]. */
    private double[] chargedByHour(double shoreW) {
        double[] watts = hookedUpByHour(shoreW);
        budget.relief().ifPresent(hookup -> {
            for (int hour = 0; hour < watts.length; hour++) {
                watts[hour] *= ShoreCharger.shareLeft(shoreW, hookup.sparePowerW(hour));
            }
        });
        return watts;
    }

    /** A power while the engine runs, by hour of the day [W]. */
    public double[] drivenByHour(double powerW) {
        return HoursOfDay.power(powerW, HoursOfDay.DRIVING_FROM, drivingHours.value());
    }

    /** A power while plugged in, by hour of the day [W]. */
    public double[] hookedUpByHour(double powerW) {
        return HoursOfDay.power(powerW, HoursOfDay.HOOKUP_FROM, hookupHours.value());
    }

    /** All that the stay takes out of the bus on days of the mean temperature [Wh]. */
    double takenWh() {
        return stay.nights() * uses.days().get(uses.days().size() / 2).wantedWh();
    }

    /** What its air is drawn from, as inputs of a simulation: mean, spread of the days, swing, error of the mean. */
    public List<Input> air() {
        SkyMonth sky = month.sky();
        return List.of(
                sky.meanC().as("T_m"),
                sky.daySpreadK().as("s_T"),
                sky.dailySwingK().as("D"),
                sky.meanErrorK().as("u_T"));
    }

    public String label() {
        return label(index);
    }

    private static String label(int index) {
        return "stay " + (index + 1);
    }

    public double hottestAfternoonC() {
        return month.sky().meanC().value() + month.sky().dailySwingK().value() / 2;
    }
}
