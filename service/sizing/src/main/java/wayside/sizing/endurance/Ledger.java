package wayside.sizing.endurance;

import java.util.List;

/** One system on one trip: what every hour of every stay brings, before the weather. Safe to share between threads. */
public final class Ledger {
    private static final int HOURS = LedgerDay.HOURS;

    final List<LedgerDay> days;
    final LedgerBank bank;
    private final LedgerStay[] stays;
    private final double solarW;
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
        this.solarW = solarW;
        startWh = startShare * bank.energyWh;
        stays = days.stream().map(day -> new LedgerStay(day, bank)).toArray(LedgerStay[]::new);
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
        double store = startWh;
        int at = 0;
        for (LedgerStay stay : stays) {
            for (int night = 0; night < stay.day.nights(); night++) {
                for (int hour = 0; hour < HOURS; hour++) {
                    store = tally.hour(stay, hour, store, solarW * yieldWhPerW[at], at);
                    storeWh[at] = store;
                    at++;
                }
                if (untilFlat && tally.isFlat()) {
                    return true;
                }
            }
            tally.book(stay.day, stay.day.nights());
        }
        return tally.isFlat();
    }
}
