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

/** Rate, errors and duration of each operation, and the state of the process, for Prometheus. */
final class Metrics implements AutoCloseable {
    private static final String STARTED = "wayside.started";

    private record Key(String operation, String method, int status) {}

    private final PrometheusMeterRegistry registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    private final Map<Key, Timer> timers = new ConcurrentHashMap<>();
    private final AtomicInteger inFlight = new AtomicInteger();
    private final JvmGcMetrics collections = new JvmGcMetrics();
    private final Counter refused = Counter.builder("wayside.requests.refused")
            .description("Heavy requests turned away because others were still at work")
            .register(registry);

    Metrics() {
        new JvmMemoryMetrics().bindTo(registry);
        new JvmThreadMetrics().bindTo(registry);
        new ProcessorMetrics().bindTo(registry);
        collections.bindTo(registry);
        Gauge.builder("wayside.requests.active", inFlight, AtomicInteger::get)
                .description("Requests at work")
                .register(registry);
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
        timers.computeIfAbsent(new Key(operation, method(context), context.statusCode()), this::timer)
                .record(nanos, TimeUnit.NANOSECONDS);
        return nanos;
    }

    void countRefusal() {
        refused.increment();
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
    static String method(Context context) {
        return switch (context.req().getMethod()) {
            case "GET", "POST", "HEAD", "OPTIONS", "PUT", "DELETE", "PATCH" ->
                context.req().getMethod();
            default -> "other";
        };
    }

    @Override
    public void close() {
        collections.close();
        registry.close();
    }
}
