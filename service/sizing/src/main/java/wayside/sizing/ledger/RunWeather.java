package wayside.sizing.ledger;

import wayside.sizing.trace.Unit;

/** The sun and the air of one run, by hour of the trip from its first midnight; filled anew for each run. */
public final class RunWeather {
    /** Energy out of the charge controller for each rated watt of array [Wh/W]. */
    final double[] yieldWhPerW;
    /**
     * The air as a bank feels it that follows it with the trip's lag [C]; a float is good to a millionth of a degree and takes half
     * the room.
     */
    final float[] boxC;
    /** Mean of the air, by day [C]. */
    final float[] dayC;

    public RunWeather(int hours) {
        yieldWhPerW = new double[hours];
        boxC = new float[hours];
        dayC = new float[hours / Unit.HOURS_PER_DAY];
    }

    /** Takes over another run of the same trip. */
    void set(RunWeather other) {
        System.arraycopy(other.yieldWhPerW, 0, yieldWhPerW, 0, yieldWhPerW.length);
        System.arraycopy(other.boxC, 0, boxC, 0, boxC.length);
        System.arraycopy(other.dayC, 0, dayC, 0, dayC.length);
    }

    /**
     * Turns air that was filled in by hour into what a bank feels: {@code b += (1 - exp(-1 / tau)) (T - b)} each hour, from the mean
     * of the first day on.
     *
     * @param lagHours tau [h]; at 0 the bank is as warm as the air
     */
    void follow(double lagHours) {
        for (int day = 0; day < dayC.length; day++) {
            double sum = 0;
            for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
                sum += boxC[day * Unit.HOURS_PER_DAY + hour];
            }
            dayC[day] = (float) (sum / Unit.HOURS_PER_DAY);
        }
        if (lagHours > 0) {
            double keep = Math.exp(-1 / lagHours);
            double take = -Math.expm1(-1 / lagHours);
            double b = dayC[0];
            for (int hour = 0; hour < boxC.length; hour++) {
                b = keep * b + take * boxC[hour];
                boxC[hour] = (float) b;
            }
        }
    }
}
