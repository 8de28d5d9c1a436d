package wayside.server.intake;

import java.util.concurrent.TimeUnit;

/**
 * How fast bytes must flow: so many a second, after a time in which none need to.
 *
 * @param graceMs in which nothing need flow
 * @param bytesPerSecond 0 for no limit
 */
public record Pace(int graceMs, int bytesPerSecond) {
    /** How long so many bytes may take in all [ns]. */
    long nanosFor(long bytes) {
        return bytesPerSecond == 0
                ? Long.MAX_VALUE / 4
                : TimeUnit.MILLISECONDS.toNanos(graceMs + 1000 * bytes / bytesPerSecond);
    }
}
