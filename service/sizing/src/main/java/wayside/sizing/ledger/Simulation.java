package wayside.sizing.ledger;

import java.util.List;
import java.util.stream.IntStream;
import wayside.sizing.brief.Wanted;

/** Simulates a trip many times. Runs are dealt out in fixed blocks; threads only decide who simulates which. */
public final class Simulation {
    private static final int BLOCK = 50;

    private Simulation() {}

    /** All runs, with the track of the state of charge. */
    public static Outcome simulate(Ledger ledger, Weather weather, int runs) {
        Wanted wanted = Wanted.here();
        StateBands bands = new StateBands(runs, weather.hours());
        StateBands warmth = new StateBands(runs, weather.hours());
        List<Totals> blocks = IntStream.range(0, blocks(runs))
                .parallel()
                .mapToObj(block -> simulateBlock(ledger, weather, block, runs, bands, warmth, wanted))
                .toList();
        Totals all = new Totals();
        blocks.forEach(all::add);
        return new Outcome(ledger, weather.hours(), all, bands, warmth);
    }

    private static Totals simulateBlock(
            Ledger ledger, Weather weather, int block, int runs, StateBands bands, StateBands warmth, Wanted wanted) {
        wanted.check();
        RunBuffers buffers = new RunBuffers(ledger, weather);
        Totals totals = new Totals();
        for (int run = block * BLOCK; run < Math.min(runs, (block + 1) * BLOCK); run++) {
            buffers.simulate(run);
            bands.record(run, buffers.storeWh, ledger.bank.energyWh);
            warmth.recordWarmth(run, buffers.cells.cellC);
            totals.add(run, buffers.tally, ledger.bank);
        }
        return totals;
    }

    /**
     * How many of the runs go flat; each stops when it does.
     *
     * @param weather the same for every system that is to be compared
     */
    public static int flatRuns(Ledger ledger, Weather weather, int runs) {
        Wanted wanted = Wanted.here();
        return IntStream.range(0, blocks(runs))
                .parallel()
                .map(block -> flatOfBlock(ledger, weather, block, runs, wanted))
                .sum();
    }

    private static int flatOfBlock(Ledger ledger, Weather weather, int block, int runs, Wanted wanted) {
        wanted.check();
        RunBuffers buffers = new RunBuffers(ledger, weather);
        int flat = 0;
        for (int run = block * BLOCK; run < Math.min(runs, (block + 1) * BLOCK); run++) {
            flat += buffers.goesFlat(run) ? 1 : 0;
        }
        return flat;
    }

    /** Hours of a usual run in which charge was on offer and the cold kept it out [h]; no track is kept. */
    public static double coldHours(Ledger ledger, Weather weather, int runs) {
        Wanted wanted = Wanted.here();
        int all = IntStream.range(0, blocks(runs))
                .parallel()
                .map(block -> coldHoursOfBlock(ledger, weather, block, runs, wanted))
                .sum();
        return (double) all / runs;
    }

    private static int coldHoursOfBlock(Ledger ledger, Weather weather, int block, int runs, Wanted wanted) {
        wanted.check();
        RunBuffers buffers = new RunBuffers(ledger, weather);
        int hours = 0;
        for (int run = block * BLOCK; run < Math.min(runs, (block + 1) * BLOCK); run++) {
            buffers.simulate(run);
            hours += buffers.tally.coldHours;
        }
        return hours;
    }

    /**
     * When each run first leaves an essential load short: the hour of the trip, from 0, or the trip's length if never. Sorted.
     */
    public static int[] firstFlatHours(Ledger ledger, Weather weather, int runs) {
        Wanted wanted = Wanted.here();
        return IntStream.range(0, blocks(runs))
                .parallel()
                .mapToObj(block -> firstFlatOfBlock(ledger, weather, block, runs, wanted))
                .flatMapToInt(IntStream::of)
                .sorted()
                .toArray();
    }

    private static int[] firstFlatOfBlock(Ledger ledger, Weather weather, int block, int runs, Wanted wanted) {
        wanted.check();
        RunBuffers buffers = new RunBuffers(ledger, weather);
        int first = block * BLOCK;
        int[] hours = new int[Math.min(runs, first + BLOCK) - first];
        for (int i = 0; i < hours.length; i++) {
            hours[i] = buffers.goesFlat(first + i) ? buffers.tally.firstFlatHour : weather.hours();
        }
        return hours;
    }

    private static int blocks(int runs) {
        return (runs + BLOCK - 1) / BLOCK;
    }
}
