package wayside.sizing.ledger;

/**
 * Random numbers of one run: decided by the seed and the run's place in the row alone, so that any thread may simulate any run.
 *
 * <p>The generator counts up by the golden ratio and mixes the bits. Source: G. L. Steele, D. Lea and C. H. Flood, Fast
 * splittable pseudorandom number generators, OOPSLA 2014 (SplitMix64).
 */
final class RunRandom {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final long OF_HOURS = 0x5851F42D4C957F2DL;
    private static final long OF_AIR = 0x2545F4914F6CDD1DL;
    private static final double UNIT = 0x1.0p-53;

    /** Mean of sixteen bits as a number. */
    private static final double MIDDLE = 0x1.0p15 - 0.5;
    /** Four uniform numbers have a variance of a third of their width's square. */
    private static final double PER_SIXTEENTH_BIT = Math.sqrt(3) * 0x1.0p-16;

    private long state;

    RunRandom(long seed, int run) {
        state = mix(mix(seed + GOLDEN) ^ (run + 1L) * GOLDEN);
    }

    /** The numbers that a run's air is drawn from, apart from those of its light. */
    static RunRandom ofAir(long seed, int run) {
        return new RunRandom(mix(seed ^ OF_AIR), run);
    }

    /** The numbers that the hours of a run's days are drawn from. */
    static RunRandom ofHours(long seed, int run) {
        return new RunRandom(mix(seed ^ OF_HOURS), run);
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

    /**
     * Nearly normal, of mean 0 and variance 1, at a quarter of the price: the sum of four uniform numbers, which ends at 3.46.
     */
    double nextRoughlyNormal() {
        state += GOLDEN;
        long bits = mix(state);
        long sum = (bits & 0xFFFF) + ((bits >>> 16) & 0xFFFF) + ((bits >>> 32) & 0xFFFF) + (bits >>> 48);
        return (sum - 4 * MIDDLE) * PER_SIXTEENTH_BIT;
    }

    private static long mix(long bits) {
        long z = bits;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
