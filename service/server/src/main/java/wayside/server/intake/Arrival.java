package wayside.server.intake;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.util.thread.Scheduler;
import org.jspecify.annotations.Nullable;
import wayside.server.problem.ProblemKind;

/** Takes a body in as it comes, without a thread that waits for it, within its limit, its time and the memory for bodies. */
final class Arrival implements Runnable {
    /** What is to become of it, called once. */
    interface End {
        void arrived(byte[] body);

        void refused(Refusal refusal);

        void broken(Throwable failure);
    }

    private static final int SMALLEST = 1 << 10;
    /** Of a body that is refused so much is read past, so that a client that still sends hears why. */
    private static final long MOST_DROPPED_BYTES = 16L << 20;

    private static final long DROPPING_NANOS = TimeUnit.SECONDS.toNanos(2);

    private final Request request;
    private final String client;
    private final Limit limit;
    private final Allotment memory;
    private final Pace pace;
    private final End end;
    private final long begun = System.nanoTime();
    private byte[] body = {};
    private int size;
    private long dropped;
    private long refusedNanos;
    private @Nullable Refusal refusal;
    private boolean ended;
    private boolean late;
    private Scheduler.@Nullable Task watch;

    Arrival(Request request, String client, Limit limit, Allotment memory, Pace pace, End end) {
        this.request = request;
        this.client = client;
        this.limit = limit;
        this.memory = memory;
        this.pace = pace;
        this.end = end;
    }

    /** @param refused why it is not to be kept, if that is known before it comes */
    void start(@Nullable Refusal refused) {
        refusal = refused == null && request.getLength() > limit.bytes() ? limit.refusal() : refused;
        if (refusal != null && request.getLength() > MOST_DROPPED_BYTES) {
            end(refusal);
            return;
        }
        refusedNanos = begun;
        watch();
        run();
    }

    /** Gives the memory of the body back. */
    void forget() {
        memory.giveBack(client, body.length);
        body = new byte[0];
    }

    /** Called whenever bytes have come. */
    @Override
    public void run() {
        while (true) {
            Content.Chunk chunk = request.read();
            if (chunk == null) {
                request.demand(this);
                return;
            }
            if (Content.Chunk.isFailure(chunk)) {
                fail(chunk.getFailure());
                return;
            }
            take(chunk.getByteBuffer());
            boolean last = chunk.isLast();
            chunk.release();
            if (last || dropped > MOST_DROPPED_BYTES) {
                end(refusal);
                return;
            }
        }
    }

    private synchronized void take(ByteBuffer bytes) {
        if (refusal == null) {
            refusal = keep(bytes);
            refusedNanos = System.nanoTime();
            if (refusal != null) {
                watch();
            }
        }
        if (refusal != null) {
            dropped += bytes.remaining();
        }
    }

    private @Nullable Refusal keep(ByteBuffer bytes) {
        int more = bytes.remaining();
        if (size + more > limit.bytes()) {
            return limit.refusal();
        }
        if (size + more > body.length) {
            // What is said of its length is not taken for granted: memory goes to who sends, not to who promises.
            long declared = Math.max(0, request.getLength());
            int room = (int) Math.min(Math.max(size + more, Math.max(SMALLEST, 2L * body.length)), limit.bytes());
            room = declared >= size + more ? (int) Math.min(room, declared) : room;
            if (!memory.take(client, room - body.length)) {
                return Refusal.busy(memory.isHeldBy(client), "memory", "large requests", 2);
            }
            body = Arrays.copyOf(body, room);
        }
        bytes.get(body, size, more);
        size += more;
        return null;
    }

    private void fail(Throwable failure) {
        if (refusal != null) {
            end(refusal);
        } else if (late || failure instanceof TimeoutException) {
            end(Refusal.of(ProblemKind.REQUEST_TIMEOUT, "slow-body", "The body did not come within the time set."));
        } else if (end()) {
            end.broken(failure);
        }
    }

    private void end(@Nullable Refusal why) {
        if (!end()) {
            return;
        }
        if (why != null) {
            end.refused(why);
        } else {
            end.arrived(body.length == size ? body : Arrays.copyOf(body, size));
        }
    }

    private synchronized boolean end() {
        boolean first = !ended;
        ended = true;
        if (watch != null) {
            watch.cancel();
        }
        return first;
    }

    private synchronized void watch() {
        if (ended) {
            return;
        }
        if (watch != null) {
            watch.cancel();
        }
        long left = refusal == null
                ? pace.nanosFor(size) - (System.nanoTime() - begun)
                : DROPPING_NANOS - (System.nanoTime() - refusedNanos);
        if (left <= 0) {
            late = true;
            request.fail(new TimeoutException("The body came too slowly"));
        } else {
            Scheduler scheduler = request.getComponents().getScheduler();
            watch = scheduler.schedule(this::watch, left, TimeUnit.NANOSECONDS);
        }
    }

    /**
     * How large a body may be.
     *
     * @param refusal what is told of a larger one
     */
    record Limit(long bytes, Refusal refusal) {}
}
