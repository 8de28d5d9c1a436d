import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;

/** Many clients that do the same at once. */
final class Crowd {
    /** What one of them does; returns the status that it met. */
    interface Member {
        int act(int number) throws Exception;
    }

    private Crowd() {}

    /** How often each status was met; 0 for none. */
    static Map<Integer, Integer> of(int size, Member member) throws InterruptedException {
        Map<Integer, Integer> met = new TreeMap<>();
        CountDownLatch go = new CountDownLatch(1);
        List<Thread> threads = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            int number = i;
            Thread thread = new Thread(null, () -> {
                int status;
                try {
                    go.await();
                    status = member.act(number);
                } catch (Exception e) {
                    status = 0;
                }
                synchronized (met) {
                    met.merge(status, 1, Integer::sum);
                }
            }, "crowd", 256 << 10);
            threads.add(thread);
            thread.start();
        }
        go.countDown();
        for (Thread thread : threads) {
            thread.join();
        }
        return met;
    }

    /** Every one was answered, and with one of these. */
    static String only(Map<Integer, Integer> met, Integer... statuses) {
        if (!List.of(statuses).containsAll(met.keySet())) {
            throw new IllegalStateException("answered " + met + ", not only " + List.of(statuses));
        }
        return met.toString();
    }
}
