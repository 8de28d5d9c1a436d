package wayside.sizing.ledger;

/**
 * How a bank follows the air round it: {@code b += (1 - exp(-1 / tau)) (T + dT - b)} each hour, T the air [C], dT how much
 * warmer it is where the bank stands [K], tau the lag [h]. It begins as warm as the mean of the first day.
 *
 * @param offsetK dT [K]
 * @param lagHours tau [h]; at 0 the bank is as warm as the air round it
 */
public record BankAir(double offsetK, double lagHours) {
    /** Share of the way to the air's temperature that the bank goes in an hour. */
    double followShare() {
        return lagHours > 0 ? -Math.expm1(-1 / lagHours) : 1;
    }

    /** Of a bank that stood in the air of a day for long [C]. */
    double startC(float[] airC, int hours) {
        double sum = 0;
        for (int hour = 0; hour < hours; hour++) {
            sum += airC[hour];
        }
        return sum / hours + offsetK;
    }
}
