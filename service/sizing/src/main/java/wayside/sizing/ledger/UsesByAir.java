package wayside.sizing.ledger;

import java.util.List;

/**
 * What the days of a stay take, by the mean temperature of the day, in equal steps: of the day nearest to it.
 *
 * @param days at least one, from cold to warm; one where no load follows the temperature
 * @param coldestC mean temperature of the first of them [C]
 * @param stepK from each to the next [K], above 0
 */
public record UsesByAir(List<DayUses> days, double coldestC, double stepK) {
    public UsesByAir {
        days = List.copyOf(days);
    }

    /** The same however warm the day. */
    public static UsesByAir steady(DayUses day) {
        return new UsesByAir(List.of(day), 0, 1);
    }

    /** Which of them a day takes. */
    int indexAt(double dayC) {
        if (days.size() == 1) {
            return 0;
        }
        long nearest = Math.round((dayC - coldestC) / stepK);
        return (int) Math.max(0, Math.min(days.size() - 1, nearest));
    }
}
