package wayside.sizing.ledger;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import wayside.sizing.brief.Wanted;

/** Simulates a trip many times. Runs are dealt out in fixed blocks; threads only decide who simulates which. */
public final class Simulation {
    private static final int BLOCK = 50;

    private Simulation() {}

    /** All runs, with the track of the state of charge. */
    public static Outcome simulate(Ledger ledger, Weather weather, int runs) {
        return simulate(ledger, weather, runs, List.of());
    }

    /**
     * The same with what became of each load.
     *
     * @param loads of each stay, in the same order
     */
    public static Outcome simulate(Ledger ledger, Weather weather, int runs, List<List<LoadHours>> loads) {
        StateBands bands = new StateBands(runs, weather.hours());
        StateBands warmth = new StateBands(runs, weather.hours());
        return simulate(ledger, weather, runs, loads, bands, warmth);
    }

    /** The same without the track, where nobody looks at it. */
    public static Outcome untracked(Ledger ledger, Weather weather, int runs, List<List<LoadHours>> loads) {
        return simulate(ledger, weather, runs, loads, StateBands.none(), StateBands.none());
    }

    private static Outcome simulate(
            Ledger ledger,
            Weather weather,
            int runs,
            List<List<LoadHours>> loads,
            StateBands bands,
            StateBands warmth) {
        Wanted wanted = Wanted.here();
        List<Block> blocks = IntStream.range(0, blocks(runs))
                .parallel()
                .mapToObj(block -> {
                    wanted.check();
                    RunBuffers buffers = new RunBuffers(ledger, weather, loads);
                    return new Block(
                            simulateBlock(ledger, buffers, block, runs, bands, warmth), buffers.tally.shortage);
                })
                .toList();
        Totals all = new Totals();
        Shortage shortage = new Shortage(loads);
        for (Block block : blocks) {
            all.add(block.totals);
            shortage.add(block.shortage);
        }
        return new Outcome(ledger, weather.hours(), all, shortage, bands, warmth);
    }

    /** What became of the runs of a block. */
    private record Block(Totals totals, Shortage shortage) {}

    private static Totals simulateBlock(
            Ledger ledger, RunBuffers buffers, int block, int runs, StateBands bands, StateBands warmth) {
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

    /** Which of the runs go flat; each stops when it does. */
    public static boolean[] whichGoFlat(Ledger ledger, Weather weather, int runs) {
        Wanted wanted = Wanted.here();
        boolean[] flat = new boolean[runs];
        IntStream.range(0, blocks(runs)).parallel().forEach(block -> {
            wanted.check();
            RunBuffers buffers = new RunBuffers(ledger, weather);
            for (int run = block * BLOCK; run < Math.min(runs, (block + 1) * BLOCK); run++) {
                flat[run] = buffers.goesFlat(run);
            }
        });
        return flat;
    }

    /**
     * Whether no more of the runs go flat than so many: known as soon as one more does.
     *
     * @param weather the same for every system that is to be compared
     */
    public static boolean flatAtMost(Ledger ledger, Weather weather, int runs, int most) {
        Wanted wanted = Wanted.here();
        AtomicInteger flat = new AtomicInteger();
        IntStream.range(0, blocks(runs))
                .parallel()
                .filter(block -> flat.get() <= most)
                .forEach(block -> flat.addAndGet(flatOfBlock(ledger, weather, block, runs, wanted)));
        return flat.get() <= most;
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
