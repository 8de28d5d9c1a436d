package wayside.sizing.brief;

import java.util.List;

/**
 * The whole question: what to run, where and when, with what wishes, how surely.
 *
 * @param loads at least one
 * @param sampling how often the trip is lived, and in what weathers, when a chance is accepted
 */
public record SystemBrief(List<Load> loads, Trip trip, SystemWishes system, Target target, Sampling sampling) {
    public SystemBrief {
        loads = List.copyOf(loads);
    }

    public static SystemBrief of(Trip trip, Load... loads) {
        return new SystemBrief(List.of(loads), trip, SystemWishes.OPEN, Target.OPEN, Sampling.OPEN);
    }
}
