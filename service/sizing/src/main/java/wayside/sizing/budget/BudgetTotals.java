package wayside.sizing.budget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.demand.Demand;
import wayside.sizing.demand.HourlyShares;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.inverter.DcConverter;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.inverter.InverterRating;
import wayside.sizing.storage.BusVoltage;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Adds up the parts of an energy budget. */
record BudgetTotals(
        Demand demand,
        Optional<InverterRating> rating,
        Optional<InverterLoss> loss,
        Optional<DcConverter> converter,
        Optional<HookupRelief> relief,
        Optional<Derived> heaterWh,
        Derived standbyWh,
        Derived busVoltageV,
        InverterSpec inverter) {
    private static final Expression LOADS = Expression.definition("E_loads = E_dc + E_ac");
    private static final Expression STANDBY_ALONE = Expression.definition("E_losses = E_standby");
    private static final Expression LOSSES = Expression.definition("E_losses = E_standby + (E_idle + E_conversion)");
    private static final Expression WITH_CONVERTER = Expression.definition("E_losses = E_others + E_converter");
    private static final Expression WITH_HEATER = Expression.definition("E_losses = E_others + E_heater");
    private static final Expression TOTAL = Expression.definition("E = E_loads + E_losses");
    private static final Expression WITH_THE_PLUGGED_IN = Expression.definition("E_loads = E_dc + E_ac + E_only");
    private static final Expression TOTAL_AT_A_HOOKUP =
            Expression.definition("E = max(0, E_loads + E_losses - E_hookup)");
    private static final Expression CHARGE = Expression.definition("Q = E / V");
    private static final Expression LOWEST = Expression.commonPractice("V_low = V s");
    private static final Expression CURRENT = Expression.definition("I = P / V_low");
    private static final Expression SHARE = Expression.definition("s = E / E_loads");
    private static final Expression SHARE_OF_NOTHING = Expression.definition("s = 0");

    EnergyBudget budget() {
        Derived loads = loads();
        Derived losses = losses();
        Derived total = total(loads, losses);
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
                converter,
                relief,
                heaterWh,
                inverter,
                hourly());
    }

    private Derived loads() {
        String label = demand.whose() + "all loads: daily energy";
        Derived dc = demand.dc().dailyEnergyWh();
        Derived ac = demand.ac().dailyEnergyWh();
        Derived only = demand.atAHookup().dailyEnergyWh();
        return only.value() > 0
                ? WITH_THE_PLUGGED_IN.value(label, Unit.WATT_HOUR, dc.as("E_dc"), ac.as("E_ac"), only.as("E_only"))
                : LOADS.value(label, Unit.WATT_HOUR, dc.as("E_dc"), ac.as("E_ac"));
    }

    private Derived total(Derived loads, Derived losses) {
        String label = demand.whose() + "energy out of the battery per day";
        return relief.map(hookup -> TOTAL_AT_A_HOOKUP.value(
                        label,
                        Unit.WATT_HOUR,
                        loads.as("E_loads"),
                        losses.as("E_losses"),
                        hookup.relievedWh().as("E_hookup")))
                .orElseGet(() -> TOTAL.value(label, Unit.WATT_HOUR, loads.as("E_loads"), losses.as("E_losses")));
    }

    private Derived losses() {
        String label = demand.whose() + "losses: daily energy";
        if (heaterWh.isEmpty()) {
            return withoutHeater(label);
        }
        return WITH_HEATER.value(
                label,
                Unit.WATT_HOUR,
                withoutHeater(demand.whose() + "losses but for the heater of the bank: daily energy")
                        .as("E_others"),
                heaterWh.get().as("E_heater"));
    }

    private Derived withoutHeater(String label) {
        if (converter.isEmpty()) {
            return withoutConverter(label);
        }
        return WITH_CONVERTER.value(
                label,
                Unit.WATT_HOUR,
                withoutConverter(demand.whose() + "losses but for the DC converter: daily energy")
                        .as("E_others"),
                converter.get().lossWh().as("E_converter"));
    }

    private Derived withoutConverter(String label) {
        if (loss.isEmpty()) {
            return STANDBY_ALONE.value(label, Unit.WATT_HOUR, standbyWh.as("E_standby"));
        }
        return LOSSES.value(
                label,
                Unit.WATT_HOUR,
                standbyWh.as("E_standby"),
                loss.get().idleWh().as("E_idle"),
                loss.get().conversionWh().as("E_conversion"));
    }

    private Derived ampereHours(Derived total) {
        return CHARGE.value(
                demand.whose() + "charge out of the battery per day",
                Unit.AMPERE_HOUR,
                total.as("E"),
                busVoltageV.as("V"));
    }

    private Derived lowestVoltage() {
        Derived share = Derived.convention(
                "lowest working voltage as a share of the nominal one",
                BusVoltage.LOWEST_SHARE,
                Unit.SHARE,
                "1.75 V per lead-acid cell, 10.5 V on a 12 V bus: currents are highest when the battery is low",
                Source.commonPractice());
        return LOWEST.value("lowest working voltage", Unit.VOLT, busVoltageV.as("V"), share.as("s"));
    }

    private Derived dcPeak(Derived lowest) {
        return CURRENT.value(
                "DC loads: current, all running",
                Unit.AMPERE,
                converter
                        .map(between -> between.fromTheBusW(demand.dc().peakPowerW()))
                        .orElse(demand.dc().peakPowerW())
                        .as("P"),
                lowest.as("V_low"));
    }

    /** Loads that draw nothing are taken to leave the inverter off. */
    private Derived acPeak(Derived lowest) {
        Derived delivered = demand.ac().peakPowerW();
        Derived power = loss.filter(running -> delivered.value() > 0)
                .map(running -> running.batteryPowerW(delivered))
                .orElse(delivered);
        return CURRENT.value(
                "inverter: battery current, all AC loads running", Unit.AMPERE, power.as("P"), lowest.as("V_low"));
    }

    private List<LoadShare> shares(Derived total) {
        List<LoadShare> shares = new ArrayList<>();
        for (LoadDemand load : demand.loads()) {
            shares.add(new LoadShare(load, share(load, total)));
        }
        return shares;
    }

    private Derived share(LoadDemand load, Derived total) {
        String label = demand.whose() + load.load().name() + ": share of the day's energy";
        return total.value() > 0
                ? SHARE.value(label, Unit.SHARE, load.dailyEnergyWh().as("E"), total.as("E_loads"))
                : SHARE_OF_NOTHING.value(label, Unit.SHARE);
    }

    private double dcFactor() {
        double energy = demand.dc().dailyEnergyWh().value();
        return energy > 0 ? 1 + converter.map(c -> c.conversionWh()).orElse(0.0) / energy : 1;
    }

    /** Standby, idle and a heater are spread evenly; conversion loss follows the AC loads. A hookup spares the idle of its hours. */
    private List<Double> hourly() {
        double converterStandby = converter.map(c -> c.standbyWh().value()).orElse(0.0);
        double standbyW = (standbyWh.value()
                        + converterStandby
                        + heaterWh.map(Derived::value).orElse(0.0))
                / Unit.HOURS_PER_DAY;
        double idleW = loss.map(l -> l.idleWh().value()).orElse(0.0) / Unit.HOURS_PER_DAY;
        double acEnergy = demand.ac().dailyEnergyWh().value();
        double conversion = loss.map(l -> l.conversionWh().value()).orElse(0.0);
        double acFactor = acEnergy > 0 ? 1 + conversion / acEnergy : 1;
        double[] watts = new double[Unit.HOURS_PER_DAY];
        for (int hour = 0; hour < watts.length; hour++) {
            watts[hour] = standbyW + idleW * unplugged(hour);
        }
        for (LoadDemand load : demand.loads()) {
            double[] shares = HourlyShares.of(load.load());
            double factor = load.load().isAc() ? acFactor : dcFactor();
            for (int hour = 0; hour < watts.length; hour++) {
                watts[hour] += shares[hour]
                        * factor
                        * left(load, hour)
                        * load.dailyEnergyWh().value();
            }
        }
        return Arrays.stream(watts).boxed().toList();
    }

    private double unplugged(int hour) {
        return relief.map(hookup -> hookup.unplugged(hour)).orElse(1.0);
    }

    private double left(LoadDemand load, int hour) {
        return relief.map(hookup -> hookup.left(load, hour)).orElse(load.onlyAtAHookup() ? 0.0 : 1.0);
    }
}
