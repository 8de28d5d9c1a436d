package wayside.sizing;

import java.util.OptionalDouble;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.recommendation.Recommendation;
import wayside.sizing.system.Site;
import wayside.sizing.system.SizePair;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Answer;

/**
 * The whole system, from the load list to cables and fuses: days of autonomy make the bank, the trip's worst month makes the
 * array. Where a chance of running flat is accepted, the pair of bank and array is found by it and built into a system by the
 * same line.
 */
public final class SystemSizer {
    /** Above this for hours, cables and fuses become unwieldy. Common practice, no source. */
    private static final double LARGEST_CURRENT_A = 200;

    /** Where the request leaves the bus open and 12 V would carry more [V]. */
    private static final double[] HIGHER_BUSES_V = {24, 48};

    private SystemSizer() {}

    /** Sizes by the accepted chance of running flat when there is one, else by days of autonomy and the worst month. */
    public static Answer<Recommendation> size(SystemBrief brief) {
        Recommendation sized = recommend(brief);
        for (double busV : HIGHER_BUSES_V) {
            if (brief.system().busVoltageV().isPresent() || sized.system().mainCurrentA() <= LARGEST_CURRENT_A) {
                break;
            }
            sized = recommend(brief.on(busV));
        }
        return answer(sized);
    }

    private static Recommendation recommend(SystemBrief brief) {
        OptionalDouble accepted = brief.target().chanceOfRunningFlat();
        return accepted.isPresent()
                ? ByChanceSizer.size(brief, accepted.getAsDouble())
                : Recommendation.of(SizedSystem.of(Site.of(brief), SizePair.OPEN));
    }

    private static Answer<Recommendation> answer(Recommendation system) {
        return new Answer<>(system, system.choices(), system.cautions());
    }
}
