package wayside.sizing.chance;

import java.util.Optional;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.Target;
import wayside.sizing.brief.Tier;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * What a system by chance must meet beside its laws.
 *
 * @param accepted chance that an essential load goes short
 * @param mostFlat of the runs, how many may [share]: none where a vital load is listed
 * @param comfortShare of what comfort loads want, how much they must get [share]; none without such loads
 * @param mustBalance whether the average day must bring in what it takes
 */
public record ChanceDemands(Derived accepted, double mostFlat, Optional<Derived> comfortShare, boolean mustBalance) {
    private static final double COMFORT_SHARE = 0.9;

    static ChanceDemands of(SystemBrief brief, double accepted) {
        Target target = brief.target();
        boolean vital = brief.loads().stream().anyMatch(load -> load.tier().equals(Optional.of(Tier.VITAL)));
        return new ChanceDemands(
                Derived.given(
                        "accepted chance of running flat", accepted, Unit.SHARE, target.at("chanceOfRunningFlat")),
                vital ? 0 : accepted,
                brief.loads().stream().allMatch(Load::isEssential) ? Optional.empty() : Optional.of(comfort(target)),
                target.mustBalance().orElse(false));
    }

    private static Derived comfort(Target target) {
        return Derived.byDefault(
                        "comfort loads: share of their energy that they must get",
                        COMFORT_SHARE,
                        Unit.SHARE,
                        target.at("comfortServedShare"),
                        "Nine tenths over such trips; on the dark days they wait",
                        Source.commonPractice())
                .unlessGiven(target.comfortServedShare());
    }

    /** Whether a count of flat runs does not say all. */
    boolean asksMore() {
        return comfortShare.isPresent() || mustBalance;
    }
}
