package wayside.sizing.ledger;

/** Sums over runs. Adding is done in the order of the runs, so that the sums don't depend on the threads. */
public final class Totals {
    int runs;
    int flatRuns;
    double beginWh;
    double endWh;
    double solarWh;
    double alternatorWh;
    double shoreWh;
    double surplusWh;
    double servedWh;
    double wantedLoadsWh;
    double wantedInverterWh;
    double wantedStandbyWh;
    double wantedHeaterWh;
    double unmetLoadsWh;
    double unmetInverterWh;
    double unmetStandbyWh;
    double unmetHeaterWh;
    double unmetEssentialWh;
    double unmetOtherWh;
    double storageLossWh;
    double withdrawnWh;
    double coldRefusedWh;
    double deepestShare;
    double deepestSum;
    double worstImbalance;
    long flatHours;
    long coldHours;
    WorstRun worst = WorstRun.NONE;

    void add(int run, Tally tally, LedgerBank bank) {
        runs++;
        flatRuns += tally.isFlat() ? 1 : 0;
        beginWh += tally.beginWh;
        endWh += tally.endWh;
        solarWh += tally.solarWh;
        alternatorWh += tally.alternatorWh;
        shoreWh += tally.shoreWh;
        surplusWh += tally.surplusWh;
        servedWh += tally.servedWh;
        wantedLoadsWh += tally.wantedLoadsWh;
        wantedInverterWh += tally.wantedInverterWh;
        wantedStandbyWh += tally.wantedStandbyWh;
        wantedHeaterWh += tally.wantedHeaterWh;
        unmetLoadsWh += tally.unmetLoadsWh;
        unmetInverterWh += tally.unmetInverterWh;
        unmetStandbyWh += tally.unmetStandbyWh;
        unmetHeaterWh += tally.unmetHeaterWh;
        unmetEssentialWh += tally.unmetEssentialWh;
        unmetOtherWh += tally.unmetOtherWh;
        storageLossWh += tally.storageLossWh();
        withdrawnWh += tally.withdrawnWh;
        coldRefusedWh += tally.coldRefusedWh;
        double deepest = 1 - tally.lowestWh / bank.energyWh;
        deepestShare = Math.max(deepestShare, deepest);
        deepestSum += deepest;
        worstImbalance = Math.max(worstImbalance, Math.abs(tally.imbalanceWh()));
        flatHours += tally.flatHours;
        coldHours += tally.coldHours;
        worst = worst.orWorse(WorstRun.of(run, tally, bank));
    }

    /** Adds the runs that follow. */
    void add(Totals next) {
        runs += next.runs;
        flatRuns += next.flatRuns;
        beginWh += next.beginWh;
        endWh += next.endWh;
        solarWh += next.solarWh;
        alternatorWh += next.alternatorWh;
        shoreWh += next.shoreWh;
        surplusWh += next.surplusWh;
        servedWh += next.servedWh;
        wantedLoadsWh += next.wantedLoadsWh;
        wantedInverterWh += next.wantedInverterWh;
        wantedStandbyWh += next.wantedStandbyWh;
        wantedHeaterWh += next.wantedHeaterWh;
        unmetLoadsWh += next.unmetLoadsWh;
        unmetInverterWh += next.unmetInverterWh;
        unmetStandbyWh += next.unmetStandbyWh;
        unmetHeaterWh += next.unmetHeaterWh;
        unmetEssentialWh += next.unmetEssentialWh;
        unmetOtherWh += next.unmetOtherWh;
        storageLossWh += next.storageLossWh;
        withdrawnWh += next.withdrawnWh;
        coldRefusedWh += next.coldRefusedWh;
        deepestShare = Math.max(deepestShare, next.deepestShare);
        deepestSum += next.deepestSum;
        worstImbalance = Math.max(worstImbalance, next.worstImbalance);
        flatHours += next.flatHours;
        coldHours += next.coldHours;
        worst = worst.orWorse(next.worst);
    }
}
