package wayside.sizing.ledger;

import java.util.List;
import wayside.sizing.trace.Unit;

/** One system on one trip: what every hour of every stay brings, before the weather. Safe to share between threads. */
public final class Ledger {
    final LedgerBank bank;
    final double offsetK;
    private final LedgerStay[][] kinds;
    private final double startWh;

    /**
     * A system on a trip.
     *
     * @param offsetK how much warmer than the air the bank stands [K]
     * @param solarW rated power of the array [W]
     * @param startShare state of charge at the first midnight, 0 to 1
     */
    public Ledger(List<LedgerDay> days, LedgerBank bank, double offsetK, double solarW, double startShare) {
        this.bank = bank;
        this.offsetK = offsetK;
        startWh = startShare * bank.energyWh;
        kinds = days.stream().map(day -> kinds(day, bank, solarW)).toArray(LedgerStay[][]::new);
    }

    private static LedgerStay[] kinds(LedgerDay day, LedgerBank bank, double solarW) {
        return day.uses.days().stream()
                .map(uses -> new LedgerStay(day, uses, bank, solarW))
                .toArray(LedgerStay[]::new);
    }

    /** An account for its runs. */
    Tally tally() {
        return new Tally(bank, offsetK);
    }

    /**
     * Simulates one run.
     *
     * @param weather of the run
     * @param untilFlat whether to stop on the first day that leaves an essential load short
     * @param storeWh is filled with what the bank holds after each hour [Wh]
     * @return whether an essential load went short
     */
    boolean run(RunWeather weather, boolean untilFlat, Tally tally, double[] storeWh) {
        tally.begin(startWh);
        int date = 0;
        for (LedgerStay[] stay : kinds) {
            LedgerDay day = stay[0].day;
            for (int night = 0; night < day.nights(); night++) {
                LedgerStay kind = stay[day.uses.indexAt(weather.dayC[date])];
                tally.simulate(kind, 0, Unit.HOURS_PER_DAY, date * Unit.HOURS_PER_DAY, weather, storeWh);
                tally.accrue(kind, 1);
                date++;
                if (untilFlat && tally.isFlat()) {
                    return true;
                }
            }
        }
        return tally.isFlat();
    }
}
