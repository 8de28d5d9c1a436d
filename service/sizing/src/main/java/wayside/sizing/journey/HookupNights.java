package wayside.sizing.journey;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.ledger.LedgerDay;
import wayside.sizing.ledger.LoadHours;

/**
 * A trip that spends every so many nights at a hookup.
 *
 * @param plain the trip without them
 * @param pluggedIn the same with a hookup on every night
 * @param every so many nights, 1 for each
 */
public record HookupNights(Journey plain, Journey pluggedIn, int every) {
    /** Of a trip that stands at the hookup for some more hours of such a night [h]. */
    public static HookupNights of(Journey plain, double hours, int every) {
        return new HookupNights(plain, plain.travelling(0, hours), every);
    }

    /** The days of the trip, for the ledger, in runs of equal ones. */
    public List<LedgerDay> days(double alternatorW, double shoreW) {
        List<LedgerDay> without = plain.days(alternatorW, shoreW);
        List<LedgerDay> with = pluggedIn.days(alternatorW, shoreW);
        return runs().stream()
                .map(run -> (run.pluggedIn ? with : without).get(run.stay).lasting(run.nights))
                .toList();
    }

    /** What each load wants of the battery on them. */
    public List<List<LoadHours>> loadHours() {
        List<List<LoadHours>> without = plain.loadHours();
        List<List<LoadHours>> with = pluggedIn.loadHours();
        return runs().stream()
                .map(run -> (run.pluggedIn ? with : without).get(run.stay))
                .toList();
    }

    private record Run(int stay, boolean pluggedIn, int nights) {}

    private List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        int night = 0;
        for (JourneyStay stay : plain.stays()) {
            int before = 0;
            for (int i = 1; i <= stay.stay().nights(); i++) {
                night++;
                if (night % every == 0) {
                    add(runs, new Run(stay.index(), false, i - 1 - before));
                    add(runs, new Run(stay.index(), true, 1));
                    before = i;
                }
            }
            add(runs, new Run(stay.index(), false, stay.stay().nights() - before));
        }
        return runs;
    }

    private static void add(List<Run> runs, Run run) {
        if (run.nights > 0) {
            runs.add(run);
        }
    }
}
