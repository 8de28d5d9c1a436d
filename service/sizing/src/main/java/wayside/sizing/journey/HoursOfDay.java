package wayside.sizing.journey;

import wayside.sizing.trace.Unit;

/** Which hours of a day something takes that a request only gives a number of hours for. */
final class HoursOfDay {
    /** People leave in the morning. Common practice, no source. */
    static final int DRIVING_FROM = 10;
    /** They plug in for the evening and the night. Common practice, no source. */
    static final int HOOKUP_FROM = 18;

    private HoursOfDay() {}

    /**
     * A power during a run of hours, which may pass midnight.
     *
     * @param from hour at which it begins, 0 to 23
     * @param hours how long, 0 to 24
     * @return mean power of each hour [W]
     */
    static double[] power(double powerW, int from, double hours) {
        double[] result = new double[Unit.HOURS_PER_DAY];
        double left = hours;
        for (int i = 0; i < Unit.HOURS_PER_DAY; i++) {
            result[(from + i) % Unit.HOURS_PER_DAY] = powerW * Math.max(0, Math.min(1, left));
            left--;
        }
        return result;
    }
}
