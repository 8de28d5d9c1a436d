package wayside.sizing.ledger;

import wayside.sizing.trace.Unit;

/** A kind of a stay's day as one system meets it, by local hour: what comes beside the sun, and what the cells allow. */
final class LedgerStay {
    final LedgerDay day;
    final double solarW;
    /** Engine and hookup less all loads, negative when they take more [W]. */
    final double[] sparePowerW = new double[Unit.HOURS_PER_DAY];
    /** The loads may draw the store down to this [Wh]. */
    final double[] floorWh = new double[Unit.HOURS_PER_DAY];

    final boolean[] mayCharge = new boolean[Unit.HOURS_PER_DAY];
    final boolean[] tooCold = new boolean[Unit.HOURS_PER_DAY];

    LedgerStay(LedgerDay day, double[] bankC, LedgerBank bank, double solarW) {
        this.day = day;
        this.solarW = solarW;
        for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
            double cellC = bankC[hour];
            double wantedW = day.essentialW[hour] + day.otherW[hour];
            sparePowerW[hour] = day.alternatorW[hour] + day.shoreW[hour] - wantedW;
            floorWh[hour] = bank.floorWh(cellC, wantedW);
            mayCharge[hour] = bank.mayCharge(cellC);
            tooCold[hour] = bank.tooCold(cellC);
        }
    }
}
