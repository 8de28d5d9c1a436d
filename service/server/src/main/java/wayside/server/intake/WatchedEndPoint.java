package wayside.server.intake;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.SocketChannel;
import java.util.concurrent.Executor;
import org.eclipse.jetty.io.ManagedSelector;
import org.eclipse.jetty.io.SocketChannelEndPoint;
import org.eclipse.jetty.util.BufferUtil;
import org.eclipse.jetty.util.thread.Scheduler;
import org.jspecify.annotations.Nullable;

/**
 * A connection that can be asked whether its client has gone. While a request is worked on nobody else reads from it; what a
 * client sends ahead is kept for the next reading.
 */
public final class WatchedEndPoint extends SocketChannelEndPoint {
    private static final int AHEAD_BYTES = 256;

    private final Executor executor;
    private final ByteBuffer ahead = BufferUtil.allocate(AHEAD_BYTES);
    private boolean gone;

    public WatchedEndPoint(
            SocketChannel channel, ManagedSelector selector, SelectionKey key, Scheduler scheduler, Executor executor) {
        super(channel, selector, key, scheduler);
        this.executor = executor;
    }

    /** Whether the client has ended its side of the connection: then it takes no answer. */
    synchronized boolean isGone() {
        if (!gone && !ahead.hasRemaining()) {
            BufferUtil.clearToFill(ahead);
            try {
                gone = getChannel().read(ahead) < 0;
            } catch (IOException e) {
                gone = true;
            } finally {
                ahead.flip();
            }
        }
        return gone;
    }

    /** What was read ahead is there, whatever the network says. */
    @Override
    protected void needsFillInterest() {
        boolean isThere;
        synchronized (this) {
            isThere = ahead.hasRemaining();
        }
        if (isThere) {
            executor.execute(() -> getFillInterest().fillable());
        } else {
            super.needsFillInterest();
        }
    }

    @Override
    public synchronized int fill(@Nullable ByteBuffer buffer) throws IOException {
        if (ahead.hasRemaining()) {
            return BufferUtil.append(buffer, ahead);
        }
        return super.fill(buffer);
    }
}
