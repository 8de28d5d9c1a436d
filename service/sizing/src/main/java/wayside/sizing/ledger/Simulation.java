package wayside.sizing.ledger;

import java.util.List;
import java.util.stream.IntStream;

/** Lives a trip many times. Runs are dealt out in fixed blocks; threads only decide who lives which. */
public final class Simulation {
    private static final int BLOCK = 50;

    private Simulation() {}

    /** All runs, with the track of the state of charge. */
    public static Outcome simulate(Ledger ledger, Weather weather, int runs) {
        StateBands bands = new StateBands(runs, weather.hours());
        List<Totals> blocks = IntStream.range(0, blocks(runs))
                .parallel()
                .mapToObj(block -> liveBlock(ledger, weather, block, runs, bands))
                .toList();
        Totals all = new Totals();
        blocks.forEach(all::add);
        return new Outcome(ledger, weather.hours(), all, bands);
    }

    private static Totals liveBlock(Ledger ledger, Weather weather, int block, int runs, StateBands bands) {
        double[] yield = new double[weather.hours()];
        int[] kinds = new int[weather.days()];
        double[] storeWh = new double[weather.hours()];
        Tally tally = new Tally(ledger.bank);
        Totals totals = new Totals();
        for (int run = block * BLOCK; run < Math.min(runs, (block + 1) * BLOCK); run++) {
            weather.fill(run, yield);
            weather.fillKinds(run, kinds);
            ledger.run(yield, kinds, false, tally, storeWh);
            bands.record(run, storeWh, ledger.bank.energyWh);
            totals.add(run, tally, ledger.bank);
        }
        return totals;
    }

    /**
     * How many of the runs go flat; each stops when it does.
     *
     * @param weather the same for every system that is to be compared
     */
    public static int flatRuns(Ledger ledger, Weather weather, int runs) {
        return IntStream.range(0, blocks(runs))
                .parallel()
                .map(block -> flatOfBlock(ledger, weather, block, runs))
                .sum();
    }

    private static int flatOfBlock(Ledger ledger, Weather weather, int block, int runs) {
        double[] yield = new double[weather.hours()];
        int[] kinds = new int[weather.days()];
        double[] storeWh = new double[weather.hours()];
        Tally tally = new Tally(ledger.bank);
        int flat = 0;
        for (int run = block * BLOCK; run < Math.min(runs, (block + 1) * BLOCK); run++) {
            weather.fill(run, yield);
            weather.fillKinds(run, kinds);
            flat += ledger.run(yield, kinds, true, tally, storeWh) ? 1 : 0;
        }
        return flat;
    }

    /**
     * When each run first leaves an essential load short: the hour of the trip, from 0, or the trip's length if never. Sorted.
     */
    public static int[] firstFlatHours(Ledger ledger, Weather weather, int runs) {
        return IntStream.range(0, blocks(runs))
                .parallel()
                .mapToObj(block -> firstFlatOfBlock(ledger, weather, block, runs))
                .flatMapToInt(IntStream::of)
                .sorted()
                .toArray();
    }

    private static int[] firstFlatOfBlock(Ledger ledger, Weather weather, int block, int runs) {
        double[] sun = new double[weather.hours()];
        int[] kinds = new int[weather.days()];
        double[] storeWh = new double[weather.hours()];
        Tally tally = new Tally(ledger.bank);
        int first = block * BLOCK;
        int[] hours = new int[Math.min(runs, first + BLOCK) - first];
        for (int i = 0; i < hours.length; i++) {
            weather.fill(first + i, sun);
            weather.fillKinds(first + i, kinds);
            hours[i] = ledger.run(sun, kinds, true, tally, storeWh) ? tally.firstFlatHour : weather.hours();
        }
        return hours;
    }

    private static int blocks(int runs) {
        return (runs + BLOCK - 1) / BLOCK;
    }
}
