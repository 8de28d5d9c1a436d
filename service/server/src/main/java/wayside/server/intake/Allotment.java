package wayside.server.intake;

import java.util.HashMap;
import java.util.Map;

/**
 * Something that clients share. A client may hold at most as much as is still free after it took: alone it gets half, and there
 * is always something left for the next.
 */
public final class Allotment {
    private final long total;
    private final Map<String, Long> held = new HashMap<>();
    private long used;

    public Allotment(long total) {
        this.total = total;
    }

    /** Whether the client got it; gives it back with {@link #giveBack}. */
    public synchronized boolean take(String client, long amount) {
        long mine = held.getOrDefault(client, 0L) + amount;
        if (mine > total - used) {
            return false;
        }
        used += amount;
        held.put(client, mine);
        return true;
    }

    public synchronized void giveBack(String client, long amount) {
        used -= amount;
        held.computeIfPresent(client, (name, before) -> before > amount ? Long.valueOf(before - amount) : null);
    }

    /** Whether this client alone is why it would get no more: it holds at least half of what is taken. */
    public synchronized boolean isHeldBy(String client) {
        return used > 0 && 2 * held.getOrDefault(client, 0L) >= used;
    }

    public synchronized long used() {
        return used;
    }
}
