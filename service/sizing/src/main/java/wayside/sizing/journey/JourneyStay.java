package wayside.sizing.journey;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Trip;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.ledger.LedgerDay;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.storage.BankPlace;
import wayside.sizing.trace.Derived;

/**
 * A stay of the trip, in figures.
 *
 * @param index in the trip, from 0
 * @param stay as asked
 * @param month what a rated watt of array gives there
 * @param budget what a day takes at its temperature
 * @param hourly the same by the hour
 * @param bankC mean temperature of the bank [C]
 * @param drivingHours of a day [h]
 * @param hookupHours of a day [h]
 */
public record JourneyStay(
        int index,
        Stay stay,
        SolarMonth month,
        EnergyBudget budget,
        HourlyDemand hourly,
        Derived bankC,
        Derived drivingHours,
        Derived hookupHours) {
    /** The stays of a trip. */
    static List<JourneyStay> all(Trip trip, EnergyBrief energy, PanelMount panel, Derived offsetK) {
        List<JourneyStay> stays = new ArrayList<>();
        for (Stay stay : trip.stays()) {
            int index = stays.size();
            SolarMonth month = SolarMonth.of(stay, index, panel);
            EnergyBudget budget = budget(energy, index, month, stays);
            stays.add(new JourneyStay(
                    index,
                    stay,
                    month,
                    budget,
                    HourlyDemand.of(budget),
                    bankC(index, month, offsetK),
                    StayHours.driving(stay, index),
                    StayHours.hookup(stay, index)));
        }
        return stays;
    }

    /** The same stays, whose days take something else. */
    static List<JourneyStay> taking(EnergyBrief energy, List<JourneyStay> stays) {
        List<JourneyStay> others = new ArrayList<>();
        for (JourneyStay stay : stays) {
            EnergyBudget budget = budget(energy, stay.index, stay.month, others);
            others.add(new JourneyStay(
                    stay.index,
                    stay.stay,
                    stay.month,
                    budget,
                    HourlyDemand.of(budget),
                    stay.bankC,
                    stay.drivingHours,
                    stay.hookupHours));
        }
        return others;
    }

    /** Stays differ in what a day takes only where a load follows the temperature. */
    private static EnergyBudget budget(EnergyBrief energy, int index, SolarMonth month, List<JourneyStay> before) {
        boolean changing =
                energy.loads().stream().anyMatch(load -> !load.ambientDuty().isEmpty());
        return changing || before.isEmpty()
                ? EnergyBudget.of(energy, month.sky().meanC(), label(index) + ": ")
                : before.get(0).budget;
    }

    private static Derived bankC(int index, SolarMonth month, Derived offsetK) {
        return BankPlace.meanC(label(index) + ": ", month.sky().meanC(), offsetK);
    }

    JourneyStay travelling(double moreDriving, double moreHookup) {
        return new JourneyStay(
                index,
                stay,
                month,
                budget,
                hourly,
                bankC,
                StayHours.more(drivingHours, moreDriving),
                StayHours.more(hookupHours, moreHookup));
    }

    JourneyStay warmedBy(Derived offsetK) {
        return new JourneyStay(
                index, stay, month, budget, hourly, bankC(index, month, offsetK), drivingHours, hookupHours);
    }

    /** The same stay with another number of nights. */
    JourneyStay staying(Stay other) {
        return new JourneyStay(index, other, month, budget, hourly, bankC, drivingHours, hookupHours);
    }

    LedgerDay day(double alternatorW, double shoreW, double[][] bankByHourC) {
        return new LedgerDay(
                stay.nights(),
                hourly.essential(),
                hourly.other(),
                drivenByHour(alternatorW),
                hookedUpByHour(shoreW),
                bankByHourC);
    }

    /** A power while the engine runs, by hour of the day [W]. */
    public double[] drivenByHour(double powerW) {
        return HoursOfDay.power(powerW, HoursOfDay.DRIVING_FROM, drivingHours.value());
    }

    /** A power while plugged in, by hour of the day [W]. */
    public double[] hookedUpByHour(double powerW) {
        return HoursOfDay.power(powerW, HoursOfDay.HOOKUP_FROM, hookupHours.value());
    }

    /** All that the stay takes out of the bus [Wh]. */
    double takenWh() {
        return stay.nights() * hourly.dailyWh();
    }

    public String label() {
        return label(index);
    }

    private static String label(int index) {
        return "stay " + (index + 1);
    }

    /** The coldest that the bank gets on the mean day [C]. */
    public double coldestBankC() {
        return bankC.value() - month.sky().dailySwingK().value() / 2;
    }

    public double hottestAfternoonC() {
        return month.sky().meanC().value() + month.sky().dailySwingK().value() / 2;
    }
}
