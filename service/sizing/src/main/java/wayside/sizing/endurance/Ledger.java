package wayside.sizing.endurance;

import java.util.List;

/** One system on one trip: what every hour of every stay brings, before the weather. Safe to share between threads. */
public final class Ledger {
    final List<LedgerDay> days;
    final LedgerBank bank;
    private final LedgerStay[] stays;
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
        stays = days.stream().map(day -> new LedgerStay(day, bank, solarW)).toArray(LedgerStay[]::new);
    }

    /**
     * Lives one run.
     *
     * @param yieldWhPerW of the weather
     * @param untilFlat whether to stop on the first day that leaves an essential load short
     * @param storeWh is filled with what the bank holds after each hour [Wh]
     * @return whether an essential load went short
     */
    boolean run(double[] yieldWhPerW, boolean untilFlat, Tally tally, double[] storeWh) {
        tally.begin(startWh);
        int midnight = 0;
        for (LedgerStay stay : stays) {
            for (int night = 0; night < stay.day.nights(); night++) {
                tally.live(stay, 0, LedgerDay.HOURS, midnight, yieldWhPerW, storeWh);
                midnight += LedgerDay.HOURS;
                if (untilFlat && tally.isFlat()) {
                    return true;
                }
            }
            tally.book(stay.day, stay.day.nights());
        }
        return tally.isFlat();
    }
}
