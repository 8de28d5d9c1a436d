package wayside.server.intake;

import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.eclipse.jetty.io.EndPoint;
import org.jspecify.annotations.Nullable;

/**
 * Who waits for the answer to a request.
 *
 * @param name whose it is, for shares
 * @param connection that it came on
 */
public record Client(String name, @Nullable EndPoint connection) {
    private static final String ATTRIBUTE = "wayside.client";

    /** Name of the attribute of a request that holds it. */
    public static String attribute() {
        return ATTRIBUTE;
    }

    /** Who waits for a request that has this attribute. */
    public static Client of(@Nullable Object attribute) {
        return attribute instanceof Client client ? client : new Client("unknown", null);
    }

    public boolean isGone() {
        return connection instanceof WatchedEndPoint watched
                ? watched.isGone()
                : connection != null && !connection.isOpen();
    }

    /** Asked often, looks now and then. */
    public Patience patience(int longestMs) {
        return patience(longestMs, () -> false);
    }

    /** The same of long work, which gives way to short. */
    public Patience patience(int longestMs, BooleanSupplier othersWait) {
        return new Patience(this, System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(longestMs), othersWait);
    }
}
