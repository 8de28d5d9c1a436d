package wayside.sizing.ledger;

/** All of a stay's day that no size of bank or array changes, by local hour. */
public final class LedgerDay {
    private final int nights;
    final UsesByAir uses;
    final double[] alternatorW;
    final double[] shoreW;
    final double alternatorWh;
    final double shoreWh;
    /** The bank's place above the air [K]. */
    final double warmerK;

    /**
     * A day.
     *
     * @param nights how many such days follow one another
     * @param uses what its loads take
     * @param alternatorW offered by the engine at the bank [W]
     * @param shoreW offered by the hookup at the bank [W]
     */
    public LedgerDay(int nights, UsesByAir uses, double[] alternatorW, double[] shoreW) {
        this(nights, uses, alternatorW, shoreW, 0);
    }

    private LedgerDay(int nights, UsesByAir uses, double[] alternatorW, double[] shoreW, double warmerK) {
        this.nights = nights;
        this.warmerK = warmerK;
        this.uses = uses;
        this.alternatorW = alternatorW.clone();
        this.shoreW = shoreW.clone();
        alternatorWh = HourlyUses.sum(alternatorW);
        shoreWh = HourlyUses.sum(shoreW);
    }

    /** Loads that are the same however warm the day. */
    public LedgerDay(int nights, HourlyUses essential, HourlyUses other, double[] alternatorW, double[] shoreW) {
        this(nights, UsesByAir.steady(new DayUses(essential, other)), alternatorW, shoreW);
    }

    /** The same with the bank standing so much warmer than the air [K]. */
    public LedgerDay warmerBy(double otherK) {
        return new LedgerDay(nights, uses, alternatorW, shoreW, otherK);
    }

    /** The same day so many times. */
    public LedgerDay lasting(int otherNights) {
        return new LedgerDay(otherNights, uses, alternatorW, shoreW, warmerK);
    }

    /** What its loads take. */
    public UsesByAir uses() {
        return uses;
    }

    public int nights() {
        return nights;
    }
}
