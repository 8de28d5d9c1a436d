package wayside.sizing.ledger;

import java.util.Arrays;

/** All of a stay's day that no weather and no size of bank or array changes, by local hour. */
public final class LedgerDay {
    private final int nights;
    final HourlyUses essential;
    final HourlyUses other;
    final double[] essentialW;
    final double[] otherW;
    final double[] alternatorW;
    final double[] shoreW;
    final double[][] bankC;
    final double alternatorWh;
    final double shoreWh;
    final double wantedWh;

    /**
     * A day.
     *
     * @param nights how many such days follow one another
     * @param essential what must not stop: loads, their part of the inverter, standby
     * @param other what may stop
     * @param alternatorW offered by the engine at the bank [W]
     * @param shoreW offered by the hookup at the bank [W]
     * @param bankC temperature of the bank [C], for each kind of day that the weather may bring
     */
    public LedgerDay(
            int nights,
            HourlyUses essential,
            HourlyUses other,
            double[] alternatorW,
            double[] shoreW,
            double[][] bankC) {
        this.nights = nights;
        this.essential = essential;
        this.other = other;
        essentialW = essential.sumW();
        otherW = other.sumW();
        this.alternatorW = alternatorW.clone();
        this.shoreW = shoreW.clone();
        this.bankC = Arrays.stream(bankC).map(double[]::clone).toArray(double[][]::new);
        alternatorWh = HourlyUses.sum(alternatorW);
        shoreWh = HourlyUses.sum(shoreW);
        wantedWh = HourlyUses.sum(essentialW) + HourlyUses.sum(otherW);
    }

    public int nights() {
        return nights;
    }

    public HourlyUses essential() {
        return essential;
    }

    public HourlyUses other() {
        return other;
    }
}
