package wayside.sizing;

import java.util.Comparator;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.Compartment;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.chance.ByChance;
import wayside.sizing.chance.ChanceSearch;
import wayside.sizing.recommendation.Recommendation;
import wayside.sizing.system.Site;
import wayside.sizing.system.SizePair;
import wayside.sizing.system.SizedSystem;

/** Sizes by a chance that is accepted. */
final class ByChanceSizer {
    /** Fewer hours of frost than this on a trip are no reason to move the bank. */
    private static final double NOTABLE_COLD_HOURS = 0.1;

    private ByChanceSizer() {}

    /** The system; where nobody said where the bank stands and frost keeps charge out of it, in the cabin if that is better. */
    static Recommendation size(SystemBrief brief, double accepted) {
        Recommendation outside = recommend(brief, accepted);
        BankPlacement placement = brief.system().bankPlacement();
        boolean open = placement.where().isEmpty()
                && placement.warmerByK().isEmpty()
                && placement.heater().isEmpty();
        if (!open || coldHours(outside) < NOTABLE_COLD_HOURS) {
            return outside;
        }
        SystemBrief indoors = brief.in(placement.in(Compartment.CABIN));
        Recommendation warm = recommend(indoors, accepted).movedIndoors();
        return Comparator.comparing(Recommendation::feasible)
                                .thenComparing(
                                        one -> -one.system().mass().massKg().value())
                                .compare(warm, outside)
                        > 0
                ? warm
                : outside;
    }

    private static double coldHours(Recommendation found) {
        return found.byChance()
                .map(chance -> chance.borne().coldHours().value())
                .orElse(0.0);
    }

    private static Recommendation recommend(SystemBrief brief, double accepted) {
        Site site = Site.of(brief);
        SizedSystem plain = SizedSystem.of(site, SizePair.OPEN);
        ByChance found = ChanceSearch.find(plain, accepted);
        return Recommendation.of(SizedSystem.of(site, found.pair()), found);
    }
}
