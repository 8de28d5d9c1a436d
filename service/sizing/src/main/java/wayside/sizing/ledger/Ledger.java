package wayside.sizing.ledger;

import java.util.List;
import wayside.sizing.trace.Unit;

/** One system on one trip: what every hour of every stay brings, before the weather. Safe to share between threads. */
public final class Ledger {
    final List<LedgerDay> days;
    final LedgerBank bank;
    final BankAir air;
    private final LedgerStay[][] kinds;
    private final double startWh;

    /**
     * A system on a trip.
     *
     * @param air how the bank follows it
     * @param solarW rated power of the array [W]
     * @param startShare state of charge at the first midnight, 0 to 1
     */
    public Ledger(List<LedgerDay> days, LedgerBank bank, BankAir air, double solarW, double startShare) {
        this.days = List.copyOf(days);
        this.bank = bank;
        this.air = air;
        startWh = startShare * bank.energyWh;
        kinds = days.stream().map(day -> kinds(day, bank, solarW)).toArray(LedgerStay[][]::new);
    }

    private static LedgerStay[] kinds(LedgerDay day, LedgerBank bank, double solarW) {
        return day.uses.days().stream()
                .map(uses -> new LedgerStay(day, uses, bank, solarW))
                .toArray(LedgerStay[]::new);
    }

    /**
     * Simulates one run.
     *
     * @param weather of the run
     * @param untilFlat whether to stop on the first day that leaves an essential load short
     * @param track is filled with what the run leaves behind
     * @return whether an essential load went short
     */
    boolean run(RunWeather weather, boolean untilFlat, Tally tally, Track track) {
        tally.begin(startWh, air.startC(weather.airC, Unit.HOURS_PER_DAY));
        int midnight = 0;
        for (LedgerStay[] stay : kinds) {
            LedgerDay day = stay[0].day;
            for (int night = 0; night < day.nights(); night++) {
                LedgerStay kind = stay[day.uses.indexAt(weather.airC, midnight)];
                tally.simulate(kind, 0, Unit.HOURS_PER_DAY, midnight, weather, track);
                tally.accrue(kind, 1);
                midnight += Unit.HOURS_PER_DAY;
                if (untilFlat && tally.isFlat()) {
                    return true;
                }
            }
        }
        return tally.isFlat();
    }
}
