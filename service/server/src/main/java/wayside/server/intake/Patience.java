package wayside.server.intake;

import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/** Whether an answer is still wanted: until a deadline, and while the client is there. Any thread may ask, as often as it likes. */
public final class Patience implements BooleanSupplier {
    private static final long EVERY_NANOS = TimeUnit.MILLISECONDS.toNanos(50);

    private final Client client;
    private final long deadlineNanos;
    private long nextLook = System.nanoTime();
    private volatile boolean gone;
    private volatile boolean late;

    Patience(Client client, long deadlineNanos) {
        this.client = client;
        this.deadlineNanos = deadlineNanos;
    }

    @Override
    public synchronized boolean getAsBoolean() {
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
