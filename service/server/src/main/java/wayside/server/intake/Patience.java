package wayside.server.intake;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/**
 * Whether an answer is still wanted: until a deadline, and while the client is there. Any thread may ask, as often as it likes.
 * While short work is at hand, who asks is held up a little: a core that both want changes hands only every few ms, and a short
 * answer would take many times as long. It costs long work half of its time at most.
 */
public final class Patience implements BooleanSupplier {
    private static final long EVERY_NANOS = TimeUnit.MILLISECONDS.toNanos(50);

    private static final long REST_NANOS = TimeUnit.MICROSECONDS.toNanos(500);

    private final Client client;
    private final BooleanSupplier othersWait;
    private final long begunNanos = System.nanoTime();
    private final AtomicLong restedNanos = new AtomicLong();
    private final long deadlineNanos;
    private long nextLook = System.nanoTime();
    private volatile boolean gone;
    private volatile boolean late;

    /** @param othersWait whether there is shorter work, which goes first */
    Patience(Client client, long deadlineNanos, BooleanSupplier othersWait) {
        this.client = client;
        this.othersWait = othersWait;
        this.deadlineNanos = deadlineNanos;
    }

    @Override
    public boolean getAsBoolean() {
        giveWay();
        return isWanted();
    }

    private void giveWay() {
        while (othersWait.getAsBoolean() && 2 * restedNanos.get() < System.nanoTime() - begunNanos) {
            long before = System.nanoTime();
            LockSupport.parkNanos(REST_NANOS);
            restedNanos.addAndGet(System.nanoTime() - before);
        }
    }

    private synchronized boolean isWanted() {
        long now = System.nanoTime();
        if (!gone && !late && now - nextLook >= 0) {
            nextLook = now + EVERY_NANOS;
            late = now - deadlineNanos > 0;
            gone = client.isGone();
        }
        return !gone && !late;
    }

    /** Whether it ended because the client left. */
    public boolean isGone() {
        return gone;
    }
}
