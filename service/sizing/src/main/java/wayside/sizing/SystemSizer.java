package wayside.sizing;

import java.util.OptionalDouble;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.chance.ByChance;
import wayside.sizing.chance.ChanceSearch;
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
    private SystemSizer() {}

    /** Sizes by the accepted chance of running flat when there is one, else by days of autonomy and the worst month. */
    public static Answer<Recommendation> size(SystemBrief brief) {
        Site site = Site.of(brief);
        SizedSystem plain = SizedSystem.of(site, SizePair.OPEN);
        OptionalDouble accepted = brief.target().chanceOfRunningFlat();
        if (accepted.isEmpty()) {
            return answer(Recommendation.of(plain));
        }
        ByChance found = ChanceSearch.find(plain, accepted.getAsDouble());
        return answer(Recommendation.of(SizedSystem.of(site, found.pair()), found));
    }

    private static Answer<Recommendation> answer(Recommendation system) {
        return new Answer<>(system, system.choices(), system.cautions());
    }
}
