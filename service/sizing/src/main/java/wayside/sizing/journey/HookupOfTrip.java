package wayside.sizing.journey;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Mains;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.budget.Hookup;
import wayside.sizing.budget.MainsUse;
import wayside.sizing.charging.HookupLimit;
import wayside.sizing.demand.HourlyShares;
import wayside.sizing.trace.Derived;

/**
 * The hookup of a trip: when it is there, and what runs nowhere else.
 */
final class HookupOfTrip {
    private HookupOfTrip() {}

    /** Whether AC loads run straight off a hookup. */
    static boolean passesThrough(Mains mains) {
        return mains.passThrough().orElse(true);
    }

    /**
     * What a day of a stay may take from it.
     *
     * @param hours of each stay of the trip at a hookup [h]
     * @param stay whose day
     */
    static MainsUse of(Mains mains, List<Load> loads, List<Derived> hours, int stay) {
        if (!passesThrough(mains) || loads.stream().noneMatch(Load::isAc)) {
            return MainsUse.NONE;
        }
        double plugged = hours.get(stay).value();
        Derived limit = HookupLimit.powerW(mains);
        Optional<Hookup> hookup =
                plugged > 0 ? Optional.of(new Hookup(hours.get(stay), limit, byHour(plugged))) : Optional.empty();
        return new MainsUse(hookup, only(loads, hours, limit.value()));
    }

    /** Those that run in no hour of the trip in which the vehicle is not plugged in, as far as the hookup runs them together. */
    private static Set<Load> only(List<Load> loads, List<Derived> hours, double limitW) {
        Set<Load> only = new HashSet<>();
        double left = limitW;
        for (Load load : loads) {
            double watts = load.count() * watts(load);
            boolean always = hours.stream().allMatch(each -> isCovered(load, byHour(each.value())));
            if (load.isAc() && always && watts <= left) {
                only.add(load);
                left -= watts;
            }
        }
        return only;
    }

    private static double watts(Load load) {
        return load.power() instanceof RunningPower.Amps amps
                ? amps.currentA() * amps.voltageV()
                : ((RunningPower.Watts) load.power()).powerW();
    }

    private static boolean isCovered(Load load, List<Double> pluggedIn) {
        double[] shares = HourlyShares.of(load);
        for (int hour = 0; hour < shares.length; hour++) {
            if (shares[hour] > 0 && pluggedIn.get(hour) < 1) {
                return false;
            }
        }
        return true;
    }

    private static List<Double> byHour(double hours) {
        return Arrays.stream(HoursOfDay.power(1, HoursOfDay.HOOKUP_FROM, hours))
                .boxed()
                .toList();
    }
}
