package wayside.sizing.ledger;

/**
 * A heater of the bank in the plain figures of the ledger.
 *
 * @param powerW while it is on [W]; 0 for none
 * @param riseK by which it warms the bank when it stays on [K]
 * @param onBelowC it goes on when the bank is colder [C]
 * @param offAboveC it goes off when the bank is warmer [C]
 * @param lagHours with which the bank follows [h], above 0 where there is a heater
 */
public record LedgerHeater(double powerW, double riseK, double onBelowC, double offAboveC, double lagHours) {
    public static final LedgerHeater NONE = new LedgerHeater(0, 0, 0, 0, 0);
}
