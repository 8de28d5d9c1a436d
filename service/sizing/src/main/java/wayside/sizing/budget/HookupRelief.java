package wayside.sizing.budget;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wayside.sizing.demand.Demand;
import wayside.sizing.demand.HourlyShares;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * What a hookup takes off the battery on a day, by the hour. While plugged in, AC loads that the hookup can run hang on it, first
 * those that run nowhere else; what a load of more power than the hookup's asks for stays with the inverter, and so does what is
 * left when all of them are at it. The inverter rests meanwhile.
 *
 * @param hookup of the day
 * @param acWh that AC loads take from it [Wh]
 * @param relievedWh that the battery need not give for it: the same, with the inverter's loss where it would have run [Wh]
 * @param passed part of each hour's energy of the other AC loads that runs straight off the hookup [share]
 * @param takenW by AC loads while plugged in, by hour [W]
 */
public record HookupRelief(Hookup hookup, Derived acWh, Derived relievedWh, List<Double> passed, List<Double> takenW) {
    private static final NamedOperation TAKEN = NamedOperation.of(
            NamedOperation.Kind.BEST_OF,
            "the energy of those AC loads that P_hookup runs, in the h hours a day at the hookup, no more in any hour than"
                    + " P_hookup gives",
            Source.commonPractice());
    private static final Expression RELIEVED =
            Expression.commonPractice("E_hookup = E_taken + E_idle h / 24 + E_conversion E_other / E_ac");

    public HookupRelief {
        passed = List.copyOf(passed);
        takenW = List.copyOf(takenW);
    }

    static HookupRelief of(Hookup hookup, Demand demand, Optional<InverterLoss> loss) {
        double limitW = hookup.limitW().value();
        Double[] passed = new Double[Unit.HOURS_PER_DAY];
        Double[] takenW = new Double[Unit.HOURS_PER_DAY];
        double taken = 0;
        double others = 0;
        for (int hour = 0; hour < passed.length; hour++) {
            double onlyW = meanW(demand, hour, LoadDemand::onlyAtAHookup);
            double othersW = meanW(demand, hour, load -> mayPass(load, limitW));
            double room = Math.max(0, limitW - onlyW);
            double pluggedIn = hookup.pluggedIn().get(hour);
            double part = othersW > room ? room / othersW : 1;
            passed[hour] = pluggedIn * part;
            takenW[hour] = onlyW + othersW * part;
            others += passed[hour] * othersW;
            taken += onlyW + passed[hour] * othersW;
        }
        Derived acWh = TAKEN.value(
                demand.whose() + "AC loads: energy straight off the hookup",
                taken,
                Unit.WATT_HOUR,
                hookup.limitW().as("P_hookup"),
                hookup.hours().as("h"),
                demand.ac().dailyEnergyWh().as("E_ac"),
                demand.atAHookup().dailyEnergyWh().as("E_only"));
        return new HookupRelief(
                hookup, acWh, relieved(hookup, demand, loss, acWh, others), List.of(passed), List.of(takenW));
    }

    private static Derived relieved(
            Hookup hookup, Demand demand, Optional<InverterLoss> loss, Derived acWh, double others) {
        Derived energy = demand.ac().dailyEnergyWh();
        if (loss.isEmpty() || energy.value() == 0) {
            return acWh;
        }
        Derived other = TAKEN.value(
                demand.whose() + "AC loads behind the inverter: energy straight off the hookup",
                others,
                Unit.WATT_HOUR,
                hookup.limitW().as("P_hookup"),
                hookup.hours().as("h"),
                energy.as("E_ac"));
        return RELIEVED.value(
                demand.whose() + "energy that the hookup takes off the battery",
                Unit.WATT_HOUR,
                acWh.as("E_taken"),
                loss.get().idleWh().as("E_idle"),
                hookup.hours().as("h"),
                loss.get().conversionWh().as("E_conversion"),
                other.as("E_other"),
                energy.as("E_ac"));
    }

    /** Whether a hookup of so much power runs it. */
    private static boolean mayPass(LoadDemand load, double limitW) {
        return load.isBehindTheInverter() && load.runningPowerW().value() <= limitW;
    }

    private static double meanW(Demand demand, int hour, Predicate<LoadDemand> some) {
        return demand.loads().stream()
                .filter(some)
                .mapToDouble(load -> HourlyShares.of(load.load())[hour]
                        * load.dailyEnergyWh().value())
                .sum();
    }

    /** Part of a load's energy of an hour that the battery must give [share]. */
    public double left(LoadDemand load, int hour) {
        if (load.onlyAtAHookup()) {
            return 0;
        }
        return mayPass(load, hookup.limitW().value()) ? 1 - passed.get(hour) : 1;
    }

    /** Part of an hour in which the inverter may not rest [share]. */
    public double unplugged(int hour) {
        return 1 - hookup.pluggedIn().get(hour);
    }

    /** What is left for a charger while plugged in [W]. */
    public double sparePowerW(int hour) {
        return Math.max(0, hookup.limitW().value() - takenW.get(hour));
    }
}
