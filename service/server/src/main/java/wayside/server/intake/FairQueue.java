package wayside.server.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A few threads and the work that waits for them. Each client has its turn by the price of what it had before: one that asks
 * for much waits behind one that asks for little.
 *
 * <p>Source: S. J. Golestani, A self-clocked fair queueing scheme for broadband applications, IEEE INFOCOM 1994: work is tagged
 * with its price after the client's last tag or the tag now served, and the least tag is next.
 */
public final class FairQueue implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(FairQueue.class);
    private static final double OF_NEWEST = 0.1;

    private record Work(String client, double price, double tag, long order, Runnable run, long queuedNanos) {}

    private final String name;
    private final int longestWaitMs;
    private final Waits waits;
    private final Allotment room;
    private final List<Thread> threads = new ArrayList<>();
    private final PriorityQueue<Work> waiting =
            new PriorityQueue<>(Comparator.comparingDouble(Work::tag).thenComparingLong(Work::order));
    private final Map<String, Double> lastTag = new HashMap<>();
    private final List<Work> atWork = new ArrayList<>();
    private double servedTag;
    private double msPerPrice;
    private long order;
    private boolean closed;

    /** Told how long work has waited. */
    public interface Waits {
        void waited(String queue, long nanos);
    }

    /**
     * A queue with its threads.
     *
     * @param places threads, which is how much is worked on at once
     * @param room most that may wait
     * @param longestWaitMs work that would wait longer is refused at once
     * @param msPerPrice how long a price takes, until it is known better [ms]
     */
    public FairQueue(String name, int places, int room, int longestWaitMs, double msPerPrice, Waits waits) {
        this.name = name;
        this.longestWaitMs = longestWaitMs;
        this.msPerPrice = msPerPrice;
        this.waits = waits;
        this.room = new Allotment(room);
        for (int i = 0; i < places; i++) {
            Thread thread = new Thread(this::work, name + "-" + i);
            thread.setDaemon(true);
            threads.add(thread);
        }
    }

    public FairQueue start() {
        threads.forEach(Thread::start);
        return this;
    }

    /**
     * Puts work in the queue.
     *
     * @param what of which there is too much, in words
     * @return null when it is there, else why it is not
     */
    public @Nullable Refusal offer(String client, double price, String what, Runnable run) {
        synchronized (this) {
            double tag = Math.max(servedTag, lastTag.getOrDefault(client, 0.0)) + price;
            double waitMs = waitMs(tag);
            boolean isIdle = waiting.isEmpty() && atWork.isEmpty();
            if ((waitMs <= longestWaitMs || isIdle) && room.take(client, 1)) {
                lastTag.put(client, tag);
                waiting.add(new Work(client, price, tag, order++, run, System.nanoTime()));
                notify();
                return null;
            }
            int seconds = (int) Math.min(60, 1 + Math.max(0, waitMs - longestWaitMs) / 1000);
            return Refusal.busy(isMostly(client), name, what, seconds);
        }
    }

    /** Whether nothing more of this client has room, whatever its price: known before its request is read. */
    public synchronized @Nullable Refusal refusal(String client, String what) {
        if (room.take(client, 1)) {
            room.giveBack(client, 1);
            return null;
        }
        int seconds = (int) Math.min(60, 1 + waitMs(Double.MAX_VALUE) / 1000);
        return Refusal.busy(isMostly(client), name, what, seconds);
    }

    /** Whether anything waits or is worked on. */
    public synchronized boolean isBusy() {
        return !waiting.isEmpty() || !atWork.isEmpty();
    }

    public synchronized int length() {
        return waiting.size();
    }

    /** How long what is before a tag will take. */
    private double waitMs(double tag) {
        double price = price(atWork) / 2;
        for (Work work : waiting) {
            price += work.tag() <= tag ? work.price() : 0;
        }
        return price * msPerPrice / threads.size();
    }

    private static double price(Collection<Work> some) {
        return some.stream().mapToDouble(Work::price).sum();
    }

    /** Whether at least half of what waits, or of what is worked on and waits, is this client's. */
    private boolean isMostly(String client) {
        double mine = 0;
        for (Collection<Work> some : List.of(atWork, waiting)) {
            for (Work work : some) {
                mine += work.client().equals(client) ? work.price() : 0;
            }
        }
        return room.isHeldBy(client) || (mine > 0 && 2 * mine >= price(atWork) + price(waiting));
    }

    private void work() {
        Work next;
        while ((next = take()) != null) {
            long begun = System.nanoTime();
            waits.waited(name, begun - next.queuedNanos());
            try {
                next.run().run();
            } catch (RuntimeException e) {
                LOG.error("Work in the queue {} failed: {}", name, e.getClass().getName());
            } finally {
                done(next, (System.nanoTime() - begun) / 1e6);
            }
        }
    }

    private synchronized @Nullable Work take() {
        while (waiting.isEmpty() && !closed) {
            try {
                wait();
            } catch (InterruptedException e) {
                return null;
            }
        }
        Work next = waiting.poll();
        if (next != null) {
            servedTag = next.tag();
            atWork.add(next);
            room.giveBack(next.client(), 1);
        }
        return next;
    }

    private synchronized void done(Work work, double ms) {
        atWork.remove(work);
        msPerPrice += OF_NEWEST * (ms / work.price() - msPerPrice);
        // A client whose turn is no later than anybody's needs no memory of it.
        if (lastTag.size() > 1000 || waiting.isEmpty()) {
            lastTag.values().removeIf(tag -> tag <= servedTag);
        }
    }

    /** What waits is still worked on. */
    @Override
    public synchronized void close() {
        closed = true;
        notifyAll();
    }
}
