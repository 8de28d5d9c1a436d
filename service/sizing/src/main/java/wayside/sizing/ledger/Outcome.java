package wayside.sizing.ledger;

import wayside.sizing.trace.Unit;

/** What became of all the runs. Energies are means over the runs, for the whole trip. */
public final class Outcome {
    private final Ledger ledger;
    private final int hours;
    private final Totals totals;
    private final Shortage shortage;
    private final StateBands bands;
    private final StateBands warmth;

    Outcome(Ledger ledger, int hours, Totals totals, Shortage shortage, StateBands bands, StateBands warmth) {
        this.ledger = ledger;
        this.hours = hours;
        this.totals = totals;
        this.shortage = shortage;
        this.bands = bands;
        this.warmth = warmth;
    }

    public int runs() {
        return totals.runs;
    }

    public int hours() {
        return hours;
    }

    public int flatRuns() {
        return totals.flatRuns;
    }

    /** Share of the runs that run flat. */
    public double chance() {
        return (double) totals.flatRuns / totals.runs;
    }

    public StateBands bands() {
        return bands;
    }

    /** How warm the bank is, by the same hours. */
    public StateBands warmth() {
        return warmth;
    }

    public WorstRun worst() {
        return totals.worst;
    }

    /** Essential energy that goes short [Wh]. */
    public double unmetWh() {
        return mean(totals.unmetEssentialWh);
    }

    /** Energy of other loads that is shed [Wh]. */
    public double shedWh() {
        return mean(totals.unmetOtherWh);
    }

    /**
     * Of what a load wants, what it gets [share]; 1 where it wants nothing.
     *
     * @param load its place in the load list
     */
    public double servedShare(int load) {
        double wantedWh = shortage.wantedWh(load, ledger.nights());
        return wantedWh > 0 ? Math.max(0, 1 - mean(shortage.unmetWh(load)) / wantedWh) : 1;
    }

    /** Nights of a run on which a load gets all it wants. */
    public double fullNights(int load) {
        return (double) hours / Unit.HOURS_PER_DAY - mean((double) shortage.shortNights(load));
    }

    /** What comes in, all that is on offer and is not kept out by the cold, less what is wanted and lost in the bank [Wh]. */
    public double balanceWh() {
        double wantedWh =
                totals.wantedLoadsWh + totals.wantedInverterWh + totals.wantedStandbyWh + totals.wantedHeaterWh;
        double sunWh = totals.solarWh + totals.surplusWh - totals.coldRefusedWh;
        return ledger.offeredWh() + mean(sunWh - wantedWh - totals.storageLossWh);
    }

    /** Hours in which an essential load goes short [h]. */
    public double unmetHours() {
        return mean((double) totals.flatHours);
    }

    public double solarWh() {
        return mean(totals.solarWh);
    }

    public double alternatorWh() {
        return mean(totals.alternatorWh);
    }

    public double shoreWh() {
        return mean(totals.shoreWh);
    }

    /** Surplus energy of the sun, which nobody took [Wh]. */
    public double surplusWh() {
        return mean(totals.surplusWh);
    }

    /** Into the loads at their plugs [Wh]. */
    public double loadsWh() {
        return mean(totals.wantedLoadsWh - totals.unmetLoadsWh);
    }

    /** Lost in the inverter [Wh]. */
    public double inverterWh() {
        return mean(totals.wantedInverterWh - totals.unmetInverterWh);
    }

    /** Outlets, monitor, alarms [Wh]. */
    public double standbyWh() {
        return mean(totals.wantedStandbyWh - totals.unmetStandbyWh);
    }

    /** Into a heater of the bank [Wh]. */
    public double heaterWh() {
        return mean(totals.wantedHeaterWh - totals.unmetHeaterWh);
    }

    /** Lost in the bank: into it, out of it, by standing [Wh]. */
    public double storageLossWh() {
        return mean(totals.storageLossWh);
    }

    /** What the bank holds more at the end than at the start; negative when it was drawn down [Wh]. */
    public double storeGainWh() {
        return mean(totals.endWh - totals.beginWh);
    }

    /** The largest energy-balance error of any run [Wh]. */
    public double worstImbalanceWh() {
        return totals.worstImbalance;
    }

    /** Energy out of the cells over the bank's energy [1]. */
    public double equivalentCycles() {
        return mean(totals.withdrawnWh) / ledger.bank.energyWh;
    }

    /** Deepest discharge of any run [share]. */
    public double deepestShare() {
        return totals.deepestShare;
    }

    /** Mean over the runs of the deepest discharge [share]. */
    public double usualDeepestShare() {
        return mean(totals.deepestSum);
    }

    /** Hours in which charge was on offer and the cold kept it out [h]. */
    public double coldHours() {
        return mean((double) totals.coldHours);
    }

    /** What the bank would have taken in them [Wh]. */
    public double coldRefusedWh() {
        return mean(totals.coldRefusedWh);
    }

    private double mean(double sum) {
        return sum / totals.runs;
    }
}
