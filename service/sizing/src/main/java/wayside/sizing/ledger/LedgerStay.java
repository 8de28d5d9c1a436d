package wayside.sizing.ledger;

import wayside.sizing.trace.Unit;

/** A kind of a stay's day as one system meets it, by local hour: what comes beside the sun, and what the loads allow. */
final class LedgerStay {
    final LedgerDay day;
    final DayUses uses;
    final double solarW;
    /** Engine and hookup less all loads, negative when they take more [W]. */
    final double[] sparePowerW = new double[Unit.HOURS_PER_DAY];
    /** What a warm bank gives at the hour's loads [Wh]. */
    final double[] availableWh = new double[Unit.HOURS_PER_DAY];
    /** What the coldest bank that may be discharged keeps back at them [Wh]. */
    final double[] coldFloorWh = new double[Unit.HOURS_PER_DAY];

    LedgerStay(LedgerDay day, DayUses uses, LedgerBank bank, double solarW) {
        this.day = day;
        this.uses = uses;
        this.solarW = solarW;
        for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
            double wantedW = uses.essentialW[hour] + uses.otherW[hour];
            sparePowerW[hour] = day.alternatorW[hour] + day.shoreW[hour] - wantedW;
            availableWh[hour] = bank.availableWh(wantedW);
            coldFloorWh[hour] = bank.coldFloorWh(availableWh[hour]);
        }
    }
}
