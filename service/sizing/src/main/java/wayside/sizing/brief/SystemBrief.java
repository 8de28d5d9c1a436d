package wayside.sizing.brief;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The whole question: what to run, where and when, with what wishes, how surely.
 *
 * @param at where it was given
 * @param loads at least one
 * @param sampling how many runs the trip is simulated in, and in what weather, when a chance is accepted
 * @param chosenBusV what takes the place of 12 V where the bus was left open [V]
 */
public record SystemBrief(
        At at,
        List<Load> loads,
        Trip trip,
        SystemWishes system,
        Target target,
        Sampling sampling,
        OptionalDouble chosenBusV)
        implements Placed {
    /** A question for which no bus was chosen yet. */
    public SystemBrief(At at, List<Load> loads, Trip trip, SystemWishes system, Target target, Sampling sampling) {
        this(at, loads, trip, system, target, sampling, OptionalDouble.empty());
    }

    public SystemBrief {
        loads = List.copyOf(loads);
    }

    /** What a day of it takes. */
    public EnergyBrief energy() {
        return new EnergyBrief(
                system.at(),
                loads,
                system.busVoltageV(),
                system.inverter(),
                system.standbyW(),
                OptionalDouble.empty(),
                system.sizes().inverters(),
                system.dcLoadsVoltageV(),
                chosenBusV,
                system.mains());
    }

    /** The same on another bus, where it was left open [V]. */
    public SystemBrief on(double busV) {
        return new SystemBrief(at, loads, trip, system, target, sampling, OptionalDouble.of(busV));
    }

    /** The same with another place of the bank. */
    public SystemBrief in(BankPlacement placement) {
        return new SystemBrief(at, loads, trip, system.in(placement), target, sampling, chosenBusV);
    }

    public static SystemBrief of(Trip trip, Load... loads) {
        return new SystemBrief(
                At.ROOT,
                Load.list(At.ROOT.field("loads"), loads),
                trip,
                SystemWishes.open(At.ROOT.field("system")),
                Target.OPEN,
                Sampling.OPEN);
    }
}
