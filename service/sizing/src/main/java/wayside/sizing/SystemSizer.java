package wayside.sizing;

import java.util.OptionalDouble;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.Compartment;
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
    /** Above this for hours, cables and fuses become unwieldy. Common practice, no source. */
    private static final double LARGEST_CURRENT_A = 200;

    /** Where the request leaves the bus open and 12 V would carry more [V]. */
    private static final double[] HIGHER_BUSES_V = {24, 48};

    private static final double HALF_AN_HOUR = 0.5;

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
        SizedSystem plain = SizedSystem.of(Site.of(brief), SizePair.OPEN);
        OptionalDouble accepted = brief.target().chanceOfRunningFlat();
        // Where the loads alone ask for a higher bus, nothing is searched on this one.
        boolean outgrown =
                brief.system().busVoltageV().isEmpty() && loadsA(plain) > LARGEST_CURRENT_A && !isLast(brief);
        if (accepted.isEmpty() || outgrown) {
            return Recommendation.of(plain);
        }
        Recommendation found = driving(brief, 0);
        double most = brief.target().mayDriveHours().orElse(0);
        for (double more = HALF_AN_HOUR; more <= most && !found.isSensible(); more += HALF_AN_HOUR) {
            found = driving(brief, more);
        }
        return found;
    }

    /** By the chance that is accepted, on a trip with some more hours of driving each day. */
    private static Recommendation driving(SystemBrief brief, double moreHours) {
        Recommendation found = byChance(brief, moreHours);
        BankPlacement placement = brief.system().bankPlacement();
        boolean open = placement.where().isEmpty()
                && placement.warmerByK().isEmpty()
                && placement.heater().isEmpty();
        if (!open || !found.isKeptCold()) {
            return found;
        }
        // Nobody said where the bank stands, and frost keeps charge out of it: in the cabin if that is better.
        return byChance(brief.in(placement.in(Compartment.CABIN)), moreHours)
                .movedIndoors()
                .orBetter(found);
    }

    private static Recommendation byChance(SystemBrief brief, double moreHours) {
        Site asked = Site.of(brief);
        Site site = moreHours > 0 ? asked.on(asked.journey().travelling(moreHours, 0)) : asked;
        ByChance found = ChanceSearch.find(
                SizedSystem.of(site, SizePair.OPEN),
                brief.target().chanceOfRunningFlat().orElseThrow());
        Recommendation recommended = Recommendation.of(SizedSystem.of(site, found.pair()), found);
        return moreHours > 0 ? recommended.drivingMore(moreHours) : recommended;
    }

    private static double loadsA(SizedSystem plain) {
        return Math.min(
                plain.mainCurrentA(),
                plain.energyBudget().dcPeakA().value()
                        + plain.energyBudget().acPeakA().value());
    }

    private static boolean isLast(SystemBrief brief) {
        return brief.chosenBusV().orElse(0) == HIGHER_BUSES_V[HIGHER_BUSES_V.length - 1];
    }

    private static Answer<Recommendation> answer(Recommendation system) {
        return new Answer<>(system, system.choices(), system.cautions());
    }
}
