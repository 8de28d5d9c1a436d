package wayside.sizing.ledger;

/**
 * Random numbers of one run: decided by the seed and the run's place in the row alone, so that any thread may simulate any run.
 *
 * <p>The generator counts up by the golden ratio and mixes the bits. Source: G. L. Steele, D. Lea and C. H. Flood, Fast
 * splittable pseudorandom number generators, OOPSLA 2014 (SplitMix64).
 */
final class RunRandom {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final long OF_AIR = 0x2545F4914F6CDD1DL;
    private static final double UNIT = 0x1.0p-53;

    private long state;

    RunRandom(long seed, int run) {
        state = mix(mix(seed + GOLDEN) ^ (run + 1L) * GOLDEN);
    }

    /** The numbers that a run's air is drawn from, apart from those of its light. */
    static RunRandom ofAir(long seed, int run) {
        return new RunRandom(mix(seed ^ OF_AIR), run);
    }

    /** Uniform, above 0 and below 1: the middle of one of 2^53 equal parts. */
    double nextShare() {
        state += GOLDEN;
        return ((mix(state) >>> 11) + 0.5) * UNIT;
    }

    /** Standard normal. */
    double nextNormal() {
        return Normal.quantile(nextShare());
    }

    private static long mix(long bits) {
        long z = bits;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
