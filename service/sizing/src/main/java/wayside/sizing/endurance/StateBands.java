package wayside.sizing.endurance;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The state of charge of every run at up to a thousand moments of the trip, in steps of 1/32000, and what shares of the runs lie
 * below. Long trips and many runs are thinned to every so many hours.
 */
public final class StateBands {
    private static final int MOST_POINTS = 1000;
    private static final int MOST_STATES = 4_000_000;
    private static final double STEPS = 32_000;

    private final int runs;
    private final int every;
    private final int points;
    private final short[] states;

    StateBands(int runs, int hours) {
        this.runs = runs;
        int most = Math.max(1, Math.min(MOST_POINTS, MOST_STATES / runs));
        every = (hours + most - 1) / most;
        points = hours / every;
        states = new short[runs * points];
    }

    /** Who watches a run. */
    StateTrack track(int run) {
        return (hour, stateOfCharge) -> {
            if ((hour + 1) % every == 0) {
                states[(hour + 1) / every - 1 + run * points] = (short) Math.round(stateOfCharge * STEPS);
            }
        };
    }

    /** Hours since the first midnight of each moment. */
    public int[] hours() {
        return IntStream.rangeClosed(1, points).map(point -> point * every).toArray();
    }

    /**
     * The states that shares of the runs do not exceed: one row for each share, by moment.
     *
     * @param shares 0 to 1
     */
    public double[][] quantiles(double... shares) {
        double[][] result = new double[shares.length][points];
        IntStream.range(0, points).parallel().forEach(point -> {
            short[] column = new short[runs];
            for (int run = 0; run < runs; run++) {
                column[run] = states[point + run * points];
            }
            Arrays.sort(column);
            for (int i = 0; i < shares.length; i++) {
                result[i][point] = column[(int) Math.round(shares[i] * (runs - 1))] / STEPS;
            }
        });
        return result;
    }
}
