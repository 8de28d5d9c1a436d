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
        Site site = Site.of(brief);
        SizedSystem plain = SizedSystem.of(site, SizePair.OPEN);
        OptionalDouble accepted = brief.target().chanceOfRunningFlat();
        // Where the loads alone ask for a higher bus, nothing is searched on this one.
        boolean outgrown =
                brief.system().busVoltageV().isEmpty() && loadsA(plain) > LARGEST_CURRENT_A && !isLast(brief);
        if (accepted.isEmpty() || outgrown) {
            return Recommendation.of(plain);
        }
        Recommendation found = byChance(plain, accepted.getAsDouble());
        BankPlacement placement = brief.system().bankPlacement();
        boolean open = placement.where().isEmpty()
                && placement.warmerByK().isEmpty()
                && placement.heater().isEmpty();
        return open && found.isKeptCold() ? orIndoors(found, brief, accepted.getAsDouble()) : found;
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

    /** Nobody said where the bank stands, and frost keeps charge out of it: in the cabin if that is better. */
    private static Recommendation orIndoors(Recommendation outside, SystemBrief brief, double accepted) {
        BankPlacement cabin = brief.system().bankPlacement().in(Compartment.CABIN);
        SizedSystem indoors = SizedSystem.of(Site.of(brief.in(cabin)), SizePair.OPEN);
        return byChance(indoors, accepted).movedIndoors().orBetter(outside);
    }

    private static Recommendation byChance(SizedSystem plain, double accepted) {
        ByChance found = ChanceSearch.find(plain, accepted);
        return Recommendation.of(SizedSystem.of(plain.site(), found.pair()), found);
    }

    private static Answer<Recommendation> answer(Recommendation system) {
        return new Answer<>(system, system.choices(), system.cautions());
    }
}
