package wayside.sizing.endurance;

import java.util.List;

/** One system on one trip: what every hour of every stay brings, before the weather. Safe to share between threads. */
public final class Ledger {
    private static final int HOURS = LedgerDay.HOURS;

    final List<LedgerDay> days;
    final LedgerBank bank;
    final double solarW;
    final double startWh;
    private final double[][] floorWh;
    private final boolean[][] mayCharge;
    private final boolean[][] tooCold;

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
        floorWh = new double[days.size()][HOURS];
        mayCharge = new boolean[days.size()][HOURS];
        tooCold = new boolean[days.size()][HOURS];
        for (int stay = 0; stay < days.size(); stay++) {
            LedgerDay day = days.get(stay);
            for (int hour = 0; hour < HOURS; hour++) {
                double cellC = day.bankC[hour];
                floorWh[stay][hour] = bank.floorWh(cellC, day.essentialW[hour] + day.otherW[hour]);
                mayCharge[stay][hour] = bank.mayCharge(cellC);
                tooCold[stay][hour] = bank.tooCold(cellC);
            }
        }
    }

    /**
     * Lives one run.
     *
     * @param yieldWhPerW of the weather
     * @param untilFlat whether to stop at the first hour that leaves an essential load short
     * @param track where the state of charge goes
     * @return whether an essential load went short
     */
    boolean run(double[] yieldWhPerW, boolean untilFlat, Tally tally, StateTrack track) {
        tally.begin(bank, startWh);
        int at = 0;
        for (int stay = 0; stay < days.size(); stay++) {
            LedgerDay day = days.get(stay);
            for (int night = 0; night < day.nights(); night++) {
                liveDay(day, floorWh[stay], mayCharge[stay], tooCold[stay], yieldWhPerW, at, tally, track);
                at += HOURS;
                if (untilFlat && tally.isFlat()) {
                    return true;
                }
            }
        }
        return tally.isFlat();
    }

    private void liveDay(
            LedgerDay day,
            double[] floors,
            boolean[] open,
            boolean[] cold,
            double[] yieldWhPerW,
            int at,
            Tally tally,
            StateTrack track) {
        double[] essentialW = day.essentialW;
        double[] otherW = day.otherW;
        double[] alternatorW = day.alternatorW;
        double[] shoreW = day.shoreW;
        for (int hour = 0; hour < HOURS; hour++) {
            double sun = solarW * yieldWhPerW[at + hour];
            double help = alternatorW[hour] + shoreW[hour];
            double spare = sun + help - essentialW[hour] - otherW[hour];
            if (spare >= 0) {
                tally.charge(spare, open[hour], cold[hour]);
            } else {
                tally.discharge(sun + help, essentialW[hour], otherW[hour], floors[hour], day, hour, at + hour);
            }
            tally.close(sun, alternatorW[hour], shoreW[hour], essentialW[hour] + otherW[hour]);
            track.hour(at + hour, tally.stateOfCharge());
        }
    }
}
