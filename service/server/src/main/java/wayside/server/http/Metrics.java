package wayside.server.http;

import io.javalin.http.Context;
import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.Timer;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import wayside.server.answer.Engine;
import wayside.server.intake.FairQueue;

/** Rate, errors and duration of each operation, and the state of the process, for Prometheus. */
final class Metrics implements AutoCloseable {
    /** Attribute of a request that was turned away: why. */
    static final String SHED = "wayside.shed";

    private static final String STARTED = "wayside.started";

    private record Key(String operation, String method, int status) {}

    private final PrometheusMeterRegistry registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    private final Map<Key, Timer> timers = new ConcurrentHashMap<>();
    private final AtomicInteger inFlight = new AtomicInteger();
    private final JvmGcMetrics collections = new JvmGcMetrics();

    Metrics() {
        new JvmMemoryMetrics().bindTo(registry);
        new JvmThreadMetrics().bindTo(registry);
        new ProcessorMetrics().bindTo(registry);
        collections.bindTo(registry);
        Gauge.builder("wayside.heap.left", Metrics::heapLeftBytes)
                .description("Of the largest heap, what is not taken")
                .baseUnit("bytes")
                .register(registry);
        Gauge.builder("wayside.build.info", () -> 1)
                .description("Which engine runs")
                .tag("version", Engine.VIEW.version())
                .register(registry);
        Gauge.builder("wayside.requests.active", inFlight, AtomicInteger::get)
                .description("Requests at work")
                .register(registry);
    }

    private static double heapLeftBytes() {
        Runtime runtime = Runtime.getRuntime();
        return runtime.maxMemory() - runtime.totalMemory() + (double) runtime.freeMemory();
    }

    void begin(Context context) {
        inFlight.incrementAndGet();
        context.attribute(STARTED, System.nanoTime());
    }

    /** Records a request that has been answered; returns its duration [ns]. */
    long end(Context context, String operation) {
        Long started = context.attribute(STARTED);
        if (started == null) {
            return 0;
        }
        inFlight.decrementAndGet();
        long nanos = System.nanoTime() - started;
        timers.computeIfAbsent(new Key(operation, method(context.req().getMethod()), context.statusCode()), this::timer)
                .record(nanos, TimeUnit.NANOSECONDS);
        return nanos;
    }

    /** @param reason one of a few words */
    void countShed(String reason) {
        Counter.builder("wayside.requests.shed")
                .description("Requests that got no further, by why")
                .tag("reason", reason)
                .register(registry)
                .increment();
    }

    void waited(String queue, long nanos) {
        Timer.builder("wayside.queue.wait")
                .description("How long work waited for a thread")
                .tag("queue", queue)
                .register(registry)
                .record(nanos, TimeUnit.NANOSECONDS);
    }

    void watch(String name, FairQueue queue) {
        Gauge.builder("wayside.queue.length", queue, FairQueue::length)
                .description("Requests that wait for a thread")
                .tag("queue", name)
                .register(registry);
    }

    void scrape(Context context) {
        context.contentType("text/plain; version=0.0.4; charset=utf-8").result(registry.scrape());
    }

    private Timer timer(Key key) {
        return Timer.builder("wayside.requests")
                .description("Requests by operation and status")
                .tag("operation", key.operation())
                .tag("method", key.method())
                .tag("status", Integer.toString(key.status()))
                .serviceLevelObjectives(
                        Duration.ofMillis(5),
                        Duration.ofMillis(25),
                        Duration.ofMillis(100),
                        Duration.ofMillis(500),
                        Duration.ofSeconds(2),
                        Duration.ofSeconds(10))
                .register(registry);
    }

    /** Methods are a closed list, or a client could make as many series, and write as many words, as it likes. */
    static String method(String method) {
        return switch (method) {
            case "GET", "POST", "HEAD", "OPTIONS", "PUT", "DELETE", "PATCH" -> method;
            default -> "other";
        };
    }

    @Override
    public void close() {
        collections.close();
        registry.close();
    }
}
