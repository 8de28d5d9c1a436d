import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A healthy client beside an attack: asks little, one request after the other, and notes how long each answer takes. */
final class Customer implements AutoCloseable {
    private static final String ADDRESS = "127.0.0.2";
    private static final String LOADS = "{\"loads\":[{\"name\":\"fan\",\"powerW\":20,\"hoursPerDay\":5}]";
    private static final List<byte[]> ASKED = List.of(
            Wire.get("/health/live"),
            Wire.json("/v1/energy-budget", LOADS + "}"),
            Wire.post(
                    "/v1/recommendation",
                    "Content-Type: application/json\r\nPrefer: return=minimal\r\n",
                    (LOADS + ",\"trip\":{\"stays\":[{\"place\":{\"latitude\":46,\"longitude\":8},\"month\":6,\"nights\":5}]}}")
                            .getBytes(java.nio.charset.StandardCharsets.UTF_8)));

    private final int port;
    private final Thread thread = new Thread(this::run, "customer");
    private final List<Double> latenciesMs = new ArrayList<>();
    private int failed;
    private String firstFailure = "";
    private volatile boolean done;

    Customer(int port) {
        this.port = port;
        thread.start();
    }

    private void run() {
        for (int i = 0; !done; i++) {
            long begun = System.nanoTime();
            Wire.Answer answer = Wire.once(ADDRESS, port, ASKED.get(i % ASKED.size()));
            latenciesMs.add((System.nanoTime() - begun) / 1e6);
            if (answer.status() != 200) {
                failed++;
                firstFailure = firstFailure.isEmpty() ? "status " + answer.status() + " of " + i % ASKED.size() : firstFailure;
            }
            try {
                Thread.sleep(15);
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    /** What it met, once it has ended. */
    record Met(int asked, int failed, String firstFailure, double medianMs, double slowestMs) {}

    Met met() throws InterruptedException {
        close();
        double[] sorted = latenciesMs.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return new Met(
                sorted.length,
                failed,
                firstFailure,
                sorted.length == 0 ? 0 : sorted[sorted.length / 2],
                Arrays.stream(sorted).max().orElse(0));
    }

    @Override
    public void close() throws InterruptedException {
        done = true;
        thread.join();
    }

    /** As warm as after some minutes of use. */
    static void warm(int port) throws IOException {
        for (int i = 0; i < 400; i++) {
            for (byte[] request : ASKED) {
                Wire.once(ADDRESS, port, request);
            }
        }
    }
}
