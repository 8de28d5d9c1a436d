package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;

/**
 * What dull days leave behind: how many usual days of a stay fill an empty bank again while everything goes on running.
 *
 * <p>{@code E_over = E_sun + E_engine + E_hookup - E_d (1 - b + b / eta)}, {@code t = E_use / (eta_c E_over)}: what the day brings
 * above what it takes, all in Wh; b the share that goes through the bank, eta its round trip, eta_c its charging.
 *
 * <p>Common practice, no source: an energy balance of mean days.
 *
 * @param overWh what a usual day brings above what it takes, below 0 when it takes more [Wh]
 * @param days to full [d]; empty when the day brings no more than it takes
 */
public record CatchUp(Derived overWh, Optional<Derived> days) {
    private static final Expression DAYS = Expression.commonPractice("t = E_use / (eta_c E_over)");
    private static final Expression OVER =
            Expression.commonPractice("E_over = E_sun + sum(E_other) - E_d (1 - b + b / eta)");

    /** @param sunWh of the array on the stay's mean day [Wh] */
    static CatchUp of(Site site, JourneyStay stay, BatteryBank bank, Chargers chargers, Derived sunWh) {
        Derived over = over(site, stay, chargers, sunWh);
        return new CatchUp(over, over.value() > 0 ? Optional.of(days(stay, bank, over)) : Optional.empty());
    }

    private static Derived days(JourneyStay stay, BatteryBank bank, Derived over) {
        Derived efficiency = bank.data().chargeEfficiency();
        return DAYS.value(
                stay.label() + ": days to fill an empty bank again",
                Unit.DAY,
                bank.usableEnergyWh().as("E_use"),
                efficiency.as("eta_c"),
                over.as("E_over"));
    }

    private static Derived over(Site site, JourneyStay stay, Chargers chargers, Derived sunWh) {
        Derived sun = OpenHours.taken(site.openHours(stay).sun(), sunWh);
        Derived daily = stay.budget().dailyTotalWh();
        Derived through = ArrayNeed.throughTheBank();
        Derived roundTrip = chargers.need().data().roundTripEfficiency();
        List<Input> inputs =
                new ArrayList<>(List.of(sun.as("E_sun"), daily.as("E_d"), through.as("b"), roundTrip.as("eta")));
        for (Derived other : ArrayNeed.others(stay, site.openHours(stay), chargers)) {
            inputs.add(other.as("E_other"));
        }
        return OVER.value(stay.label() + ": what a usual day brings above what it takes", Unit.WATT_HOUR, inputs);
    }
}
