package wayside.sizing.system;

import wayside.sizing.brief.Stay;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.storage.BatteryNeed;
import wayside.sizing.trace.Derived;

/**
 * A stay of the trip, in figures.
 *
 * @param index in the trip, from 0
 * @param month what a rated watt of array gives there
 * @param budget what a day takes at its temperature
 * @param bankC mean temperature of the bank [C]
 * @param need what the bank must carry
 * @param drivingHours of a day [h]
 * @param hookupHours of a day [h]
 */
public record SiteStay(
        int index,
        Stay stay,
        SolarMonth month,
        EnergyBudget budget,
        Derived bankC,
        BatteryNeed need,
        Derived drivingHours,
        Derived hookupHours) {
    public String label() {
        return "stay " + (index + 1);
    }

    double coldestMorningC() {
        return month.sky().meanC().value() - month.sky().dailySwingK().value() / 2;
    }

    /** The coldest that the bank gets [C]. */
    double coldestBankC() {
        return bankC.value() - month.sky().dailySwingK().value() / 2;
    }

    double hottestAfternoonC() {
        return month.sky().meanC().value() + month.sky().dailySwingK().value() / 2;
    }
}
