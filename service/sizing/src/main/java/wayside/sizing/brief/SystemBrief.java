package wayside.sizing.brief;

import java.util.List;

/**
 * The whole question: what to run, where and when, with what wishes, how surely.
 *
 * @param loads at least one
 */
public record SystemBrief(List<Load> loads, Trip trip, SystemWishes system, Target target) {
    public SystemBrief {
        loads = List.copyOf(loads);
    }

    public static SystemBrief of(Trip trip, Load... loads) {
        return new SystemBrief(List.of(loads), trip, SystemWishes.OPEN, Target.OPEN);
    }
}
