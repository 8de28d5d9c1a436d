package wayside.sizing.ledger;

import java.util.stream.IntStream;

/**
 * The state of charge of every run at up to a thousand moments of the trip, in steps of 1/4000, and what shares of the runs lie
 * below. Long trips and many runs are thinned to every so many hours.
 */
public final class StateBands {
    private static final int MOST_POINTS = 1000;
    private static final int MOST_STATES = 2_000_000;
    private static final int STEPS = 4000;
    private static final double COLDEST_C = -80;
    private static final double WARMEST_C = 80;

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

    /** A track of no moment. */
    static StateBands none() {
        return new StateBands();
    }

    private StateBands() {
        runs = 0;
        every = 1;
        points = 0;
        states = new short[0];
    }

    /**
     * Takes in a run.
     *
     * @param storeWh what the bank holds after each hour [Wh]
     * @param energyWh of the full bank [Wh]
     */
    void record(int run, double[] storeWh, double energyWh) {
        double stepsPerWh = STEPS / energyWh;
        for (int point = 0; point < points; point++) {
            double steps = storeWh[(point + 1) * every - 1] * stepsPerWh;
            states[point + run * points] = (short) (steps + 0.5);
        }
    }

    /**
     * Takes in how warm the bank of a run is, as the share of the way from {@link #COLDEST_C} to {@link #WARMEST_C}.
     *
     * @param cellC of the bank, by hour [C]
     */
    void recordWarmth(int run, float[] cellC) {
        for (int point = 0; point < points; point++) {
            double share = (cellC[(point + 1) * every - 1] - COLDEST_C) / (WARMEST_C - COLDEST_C);
            states[point + run * points] = (short) (STEPS * Math.max(0, Math.min(1, share)) + 0.5);
        }
    }

    /** The temperatures that shares of the runs do not exceed [C], where warmth was taken in. */
    public double[][] quantilesC(double... shares) {
        double[][] result = quantiles(shares);
        for (double[] row : result) {
            for (int point = 0; point < points; point++) {
                row[point] = COLDEST_C + (WARMEST_C - COLDEST_C) * row[point];
            }
        }
        return result;
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
            int[] counts = counts(point);
            for (int i = 0; i < shares.length; i++) {
                long place = Math.round(shares[i] * (runs - 1));
                result[i][point] = (double) stepAt(place, counts) / STEPS;
            }
        });
        return result;
    }

    /** How many runs stand on each step: counting is cheaper than sorting. */
    private int[] counts(int point) {
        int[] counts = new int[STEPS + 1];
        for (int run = 0; run < runs; run++) {
            counts[states[point + run * points]]++;
        }
        return counts;
    }

    /** The step of the run in this place, from 0, if all stood in line by their state. */
    private static int stepAt(long place, int[] counts) {
        int step = 0;
        for (long passed = counts[0]; passed <= place; passed += counts[step]) {
            step++;
        }
        return step;
    }
}
