package wayside.server.intake;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.Scheduler;
import org.jspecify.annotations.Nullable;

/**
 * An answer: gathered while a handler writes it, which never waits, and sent piece by piece as the client takes it. A client
 * that does not take a piece in time is cut off.
 */
final class Departure extends Response.Wrapper implements Callback {
    private static final int PIECE_BYTES = 64 << 10;

    private final Callback whole;
    private final String client;
    private final Allotment memory;
    private final Pace pace;
    private byte[] answer = {};
    private int size;
    private boolean last;
    private boolean handled;
    private boolean sent;
    private Runnable onDone = () -> {};

    Departure(Request request, Response wrapped, Callback whole, String client, Allotment memory, Pace pace) {
        super(request, wrapped);
        this.whole = whole;
        this.client = client;
        this.memory = memory;
        this.pace = pace;
    }

    /** What is to be done once, when the handler has done its part. */
    void whenDone(Runnable action) {
        onDone = action;
    }

    @Override
    public void write(boolean isLast, @Nullable ByteBuffer bytes, Callback callback) {
        boolean complete;
        synchronized (this) {
            gather(bytes);
            complete = isLast && !last;
            last |= isLast;
        }
        if (complete) {
            send();
        }
        callback.succeeded();
    }

    @Override
    public synchronized void reset() {
        super.reset();
        size = 0;
    }

    @Override
    public synchronized boolean hasLastWrite() {
        return last;
    }

    private void gather(@Nullable ByteBuffer bytes) {
        if (bytes == null || !bytes.hasRemaining()) {
            return;
        }
        int more = bytes.remaining();
        if (size + more > answer.length) {
            answer = Arrays.copyOf(answer, size == 0 ? more : Math.max(size + more, 2 * answer.length));
        }
        bytes.get(answer, size, more);
        size += more;
    }

    private void send() {
        if (size > PIECE_BYTES && !memory.take(client, size)) {
            answer = new byte[0];
            super.reset();
            Refusal.busy(memory.isHeldBy(client), "unread", "answers that are not yet taken", 5)
                    .answer(getRequest(), getWrapped(), Callback.from(this::ended, this::failed));
            return;
        }
        boolean bodiless = HttpStatus.hasNoBody(getStatus());
        if (!bodiless && size > 0 && !getHeaders().contains(HttpHeader.CONTENT_LENGTH)) {
            getHeaders().put(HttpHeader.CONTENT_LENGTH, size);
        }
        send(0);
    }

    private void send(int from) {
        int to = Math.min(size, from + PIECE_BYTES);
        Scheduler scheduler = getRequest().getComponents().getScheduler();
        Scheduler.Task watch = scheduler.schedule(this::cutOff, pace.nanosFor(to - from), TimeUnit.NANOSECONDS);
        Callback next = Callback.from(
                () -> {
                    watch.cancel();
                    if (to < size) {
                        send(to);
                    } else {
                        forget();
                        ended();
                    }
                },
                failure -> {
                    watch.cancel();
                    forget();
                    failed(failure);
                });
        getWrapped().write(to == size, ByteBuffer.wrap(answer, from, to - from), next);
    }

    private void forget() {
        if (size > PIECE_BYTES) {
            memory.giveBack(client, size);
        }
        answer = new byte[0];
    }

    private void cutOff() {
        getRequest()
                .getConnectionMetaData()
                .getConnection()
                .getEndPoint()
                .close(new TimeoutException("The answer was taken too slowly"));
    }

    private void ended() {
        synchronized (this) {
            sent = true;
            if (!handled) {
                return;
            }
        }
        whole.succeeded();
    }

    /** The handler has done its part. */
    @Override
    public void succeeded() {
        boolean begun;
        boolean complete;
        synchronized (this) {
            begun = last;
            last = true;
            handled = true;
            complete = sent;
        }
        onDone.run();
        if (!begun) {
            send();
        } else if (complete) {
            whole.succeeded();
        }
    }

    @Override
    public void failed(Throwable failure) {
        onDone.run();
        whole.failed(failure);
    }
}
