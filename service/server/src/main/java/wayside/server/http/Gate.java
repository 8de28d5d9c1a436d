package wayside.server.http;

import java.util.Map;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;

/** Lets so many heavy calculations in at once, a few more wait a moment, and turns the rest away. */
final class Gate {
    /** Threads that wait answer nobody else, so only this many for each place may wait. */
    private static final int WAITING_PER_PLACE = 4;

    private final Semaphore places;
    private final int mostWaiting;
    private final int longestWaitMs;
    private final Runnable onRefusal;

    Gate(int places, int longestWaitMs, Runnable onRefusal) {
        this.places = new Semaphore(places, true);
        this.mostWaiting = places * WAITING_PER_PLACE;
        this.longestWaitMs = longestWaitMs;
        this.onRefusal = onRefusal;
    }

    /** @throws ProblemException 503 with Retry-After, when no place came free in time */
    <T> T through(Supplier<T> work) {
        if (!enter()) {
            onRefusal.run();
            throw new ProblemException(
                    Problem.of(ProblemKind.BUSY, "Too many long calculations at once; come again in a moment."),
                    Map.of("Retry-After", "2"));
        }
        try {
            return work.get();
        } finally {
            places.release();
        }
    }

    private boolean enter() {
        if (places.tryAcquire()) {
            return true;
        }
        if (places.getQueueLength() >= mostWaiting) {
            return false;
        }
        try {
            return places.tryAcquire(longestWaitMs, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
