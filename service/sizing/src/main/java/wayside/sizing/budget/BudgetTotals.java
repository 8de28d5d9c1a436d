package wayside.sizing.budget;

import java.util.ArrayList;
import wayside.sizing.brief.InverterSpec;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Supply;
import wayside.sizing.demand.Demand;
import wayside.sizing.demand.HourlyShares;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.inverter.InverterRating;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Adds up the parts of an energy budget. */
record BudgetTotals(
        Demand demand,
        Optional<InverterRating> rating,
        Optional<InverterLoss> loss,
        Derived standbyWh,
        Derived busVoltageV,
        InverterSpec inverter) {
    /** A 12 V lead-acid battery is empty at 1.75 V per cell, 10.5 V: the lowest a bus should ever see. */
    private static final double LOWEST_SHARE_OF_NOMINAL = 0.875;

    EnergyBudget budget() {
        Derived loads = Derived.computed(
                "all loads: daily energy",
                demand.dc().dailyEnergyWh().value()
                        + demand.ac().dailyEnergyWh().value(),
                Unit.WATT_HOUR,
                Formula.definition("E = E_dc + E_ac"),
                demand.dc().dailyEnergyWh().as("E_dc"),
                demand.ac().dailyEnergyWh().as("E_ac"));
        Derived losses = losses();
        Derived total = Derived.computed(
                "energy out of the battery per day",
                loads.value() + losses.value(),
                Unit.WATT_HOUR,
                Formula.definition("E = E_loads + E_losses"),
                loads.as("E_loads"),
                losses.as("E_losses"));
        Derived lowest = lowestVoltage();
        return new EnergyBudget(
                demand,
                shares(loads),
                loads,
                standbyWh,
                losses,
                total,
                ampereHours(total),
                busVoltageV,
                lowest,
                dcPeak(lowest),
                acPeak(lowest),
                rating,
                loss,
                inverter,
                hourly());
    }

    private Derived losses() {
        List<Input> inputs = new ArrayList<>(List.of(standbyWh.as("E_standby")));
        double sum = standbyWh.value();
        if (loss.isPresent()) {
            inputs.add(loss.get().idleWh().as("E_idle"));
            inputs.add(loss.get().conversionWh().as("E_conversion"));
            sum += loss.get().idleWh().value() + loss.get().conversionWh().value();
        }
        String text = loss.isPresent() ? "E = E_standby + E_idle + E_conversion" : "E = E_standby";
        return Derived.computed(
                "losses: daily energy", sum, Unit.WATT_HOUR, Formula.definition(text), inputs.toArray(Input[]::new));
    }

    private Derived ampereHours(Derived total) {
        return Derived.computed(
                "charge out of the battery per day",
                total.value() / busVoltageV.value(),
                Unit.AMPERE_HOUR,
                Formula.definition("Q = E / V"),
                total.as("E"),
                busVoltageV.as("V"));
    }

    private Derived lowestVoltage() {
        Derived share = Derived.convention(
                "lowest working voltage as a share of the nominal one",
                LOWEST_SHARE_OF_NOMINAL,
                Unit.SHARE,
                "1.75 V per lead-acid cell, 10.5 V on a 12 V bus: currents are highest when the battery is low",
                Source.commonPractice());
        return Derived.computed(
                "lowest working voltage",
                busVoltageV.value() * LOWEST_SHARE_OF_NOMINAL,
                Unit.VOLT,
                Formula.commonPractice("V_low = s V"),
                share.as("s"),
                busVoltageV.as("V"));
    }

    private Derived dcPeak(Derived lowest) {
        Derived power = demand.dc().peakPowerW();
        return Derived.computed(
                "DC loads: current, all running",
                power.value() / lowest.value(),
                Unit.AMPERE,
                Formula.definition("I = P / V_low"),
                power.as("P"),
                lowest.as("V_low"));
    }

    private Derived acPeak(Derived lowest) {
        Derived power = demand.ac().peakPowerW();
        if (loss.isEmpty() || power.value() == 0) {
            return Derived.computed(
                    "inverter: battery current, all AC loads running",
                    0,
                    Unit.AMPERE,
                    Formula.definition("I = 0 without AC loads"),
                    power.as("P"));
        }
        Derived input = loss.get().batteryPowerW(power);
        return Derived.computed(
                "inverter: battery current, all AC loads running",
                input.value() / lowest.value(),
                Unit.AMPERE,
                Formula.definition("I = P_in / V_low"),
                input.as("P_in"),
                lowest.as("V_low"));
    }

    private List<LoadShare> shares(Derived total) {
        List<LoadShare> shares = new ArrayList<>();
        for (LoadDemand load : demand.loads()) {
            double share = total.value() > 0 ? load.dailyEnergyWh().value() / total.value() : 0;
            shares.add(new LoadShare(
                    load,
                    Derived.computed(
                            load.load().name() + ": share of the day's energy",
                            share,
                            Unit.SHARE,
                            Formula.definition("s = E / E_loads"),
                            load.dailyEnergyWh().as("E"),
                            total.as("E_loads"))));
        }
        return shares;
    }

    /** Standby and idle are spread evenly; conversion loss follows the AC loads. */
    private List<Double> hourly() {
        double even = (standbyWh.value() + loss.map(l -> l.idleWh().value()).orElse(0.0)) / HourlyShares.HOURS;
        double acEnergy = demand.ac().dailyEnergyWh().value();
        double conversion = loss.map(l -> l.conversionWh().value()).orElse(0.0);
        double acFactor = acEnergy > 0 ? 1 + conversion / acEnergy : 1;
        double[] watts = new double[HourlyShares.HOURS];
        Arrays.fill(watts, even);
        for (LoadDemand load : demand.loads()) {
            double[] shares = HourlyShares.of(load.load());
            double factor = load.load().isAc() ? acFactor : 1;
            for (int hour = 0; hour < watts.length; hour++) {
                watts[hour] += shares[hour] * factor * load.dailyEnergyWh().value();
            }
        }
        return Arrays.stream(watts).boxed().toList();
    }
}
