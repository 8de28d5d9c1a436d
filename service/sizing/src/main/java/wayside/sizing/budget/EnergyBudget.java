package wayside.sizing.budget;

import java.util.List;
import java.util.Optional;
import wayside.sizing.demand.Demand;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.inverter.InverterRating;
import wayside.sizing.trace.Derived;

/**
 * What the battery must deliver on a usual day, and at what power.
 *
 * @param demand the loads at their plugs
 * @param loads each with its share
 * @param dailyLoadWh all loads at their plugs [Wh]
 * @param standbyWh of outlets, monitor and electronics [Wh]
 * @param dailyLossWh standby and inverter together [Wh]
 * @param dailyTotalWh out of the battery [Wh]
 * @param dailyTotalAh the same at the nominal bus voltage [Ah]
 * @param busVoltageV nominal [V]
 * @param lowestVoltageV at which currents are taken [V]
 * @param dcPeakA of the DC loads and standby [A]
 * @param acPeakA into the inverter, all AC loads running [A]; 0 without AC loads
 * @param inverterRating when there is an AC load
 * @param inverterLoss when there is an AC load
 * @param hourlyW mean power out of the battery in each local hour; sums to the daily total
 */
public record EnergyBudget(
        Demand demand,
        List<LoadShare> loads,
        Derived dailyLoadWh,
        Derived standbyWh,
        Derived dailyLossWh,
        Derived dailyTotalWh,
        Derived dailyTotalAh,
        Derived busVoltageV,
        Derived lowestVoltageV,
        Derived dcPeakA,
        Derived acPeakA,
        Optional<InverterRating> inverterRating,
        Optional<InverterLoss> inverterLoss,
        List<Double> hourlyW) {
    public EnergyBudget {
        loads = List.copyOf(loads);
        hourlyW = List.copyOf(hourlyW);
    }
}
