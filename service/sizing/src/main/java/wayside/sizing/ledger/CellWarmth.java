package wayside.sizing.ledger;

import wayside.sizing.trace.Unit;

/**
 * How warm the bank is in a run, and what its heater takes, by hour of the trip; filled day by day.
 *
 * <p>The bank is as warm as the air that it feels, as much as its place is warmer, and what the heater has added: {@code h += (1 -
 * exp(-1 / tau)) (u dT - h)} each hour, u the part of the hour in which it is on, dT [K] its rise when it stays on. The heater
 * looks at the bank's temperature alone and not at its charge, so that banks of all sizes meet one temperature and the chance
 * falls with their size. A bank that cannot feed it any more has run flat by then.
 */
final class CellWarmth {
    /** Of the bank at the end of each hour [C]. */
    final float[] cellC;
    /** Mean power of the heater in each hour [W]. */
    final float[] heaterW;

    private final LedgerHeater heater;
    private final double keep;
    private final double hourK;
    private double addedK;
    private boolean on;

    CellWarmth(int hours, LedgerHeater heater) {
        this.heater = heater;
        cellC = new float[hours];
        heaterW = new float[hours];
        keep = Math.exp(-1 / heater.lagHours());
        hourK = (1 - keep) * heater.riseK();
    }

    /** Begins a run; a heater has held the bank above where it goes on, as far as it can. */
    void begin(RunWeather weather, double warmerK) {
        double missingK = heater.onBelowC() - weather.dayC[0] - warmerK;
        addedK = Math.max(0, Math.min(heater.riseK(), missingK));
        on = false;
    }

    /**
     * Fills a day.
     *
     * @param midnight first hour of it
     * @param warmerK the bank's place above the air [K]
     */
    void fillDay(RunWeather weather, int midnight, double warmerK) {
        int end = midnight + Unit.HOURS_PER_DAY;
        if (heater.powerW() > 0) {
            for (int hour = midnight; hour < end; hour++) {
                heat(hour, weather.boxC[hour] + warmerK);
            }
        } else {
            for (int hour = midnight; hour < end; hour++) {
                cellC[hour] = (float) (weather.boxC[hour] + warmerK);
            }
        }
    }

    private void heat(int hour, double unheatedC) {
        addedK *= keep;
        double cold = unheatedC + addedK;
        on |= cold < heater.onBelowC();
        double part = on ? Math.max(0, Math.min(1, (heater.offAboveC() - cold) / hourK)) : 0;
        on &= part == 1;
        addedK += part * hourK;
        cellC[hour] = (float) (cold + part * hourK);
        heaterW[hour] = (float) (part * heater.powerW());
    }
}
