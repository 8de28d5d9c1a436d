package wayside.sizing.ledger;

import java.util.Arrays;
import java.util.List;
import wayside.sizing.trace.Unit;

/** One system on one trip: what every hour of every stay brings, before the weather. Safe to share between threads. */
public final class Ledger {
    final List<LedgerDay> days;
    final LedgerBank bank;
    private final LedgerStay[][] kinds;
    private final double startWh;

    /**
     * A system on a trip.
     *
     * @param solarW rated power of the array [W]
     * @param startShare state of charge at the first midnight, 0 to 1
     */
    public Ledger(List<LedgerDay> days, LedgerBank bank, double solarW, double startShare) {
        this.days = List.copyOf(days);
        this.bank = bank;
        startWh = startShare * bank.energyWh;
        kinds = days.stream().map(day -> kinds(day, bank, solarW)).toArray(LedgerStay[][]::new);
    }

    private static LedgerStay[] kinds(LedgerDay day, LedgerBank bank, double solarW) {
        return Arrays.stream(day.bankC)
                .map(bankC -> new LedgerStay(day, bankC, bank, solarW))
                .toArray(LedgerStay[]::new);
    }

    /**
     * Simulates one run.
     *
     * @param yieldWhPerW of the weather
     * @param kindOfDay of the weather
     * @param untilFlat whether to stop on the first day that leaves an essential load short
     * @param storeWh is filled with what the bank holds after each hour [Wh]
     * @return whether an essential load went short
     */
    boolean run(double[] yieldWhPerW, int[] kindOfDay, boolean untilFlat, Tally tally, double[] storeWh) {
        tally.begin(startWh);
        int date = 0;
        for (LedgerStay[] stay : kinds) {
            LedgerDay day = stay[0].day;
            for (int night = 0; night < day.nights(); night++) {
                LedgerStay kind = stay[kindOfDay[date]];
                tally.simulate(kind, 0, Unit.HOURS_PER_DAY, date * Unit.HOURS_PER_DAY, yieldWhPerW, storeWh);
                date++;
                if (untilFlat && tally.isFlat()) {
                    return true;
                }
            }
            tally.accrue(day, day.nights());
        }
        return tally.isFlat();
    }
}
