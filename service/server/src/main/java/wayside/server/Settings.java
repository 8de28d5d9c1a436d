package wayside.server;

import java.util.List;
import java.util.Map;

/**
 * How the service is to run.
 *
 * @param host address to listen on; empty for all
 * @param port to listen on; 0 for any that is free
 * @param allowedOrigins pages of these origins may call the service; {@code *} for any
 * @param maxBodyBytes largest request body
 * @param threads that work on requests
 * @param heavyAtOnce most long calculations at once
 * @param heavyWaitMs longest wait for a place among them
 * @param calculationTimeoutMs longest that a calculation may take
 * @param maxPriceMs dearest request that is taken [ms of a core]
 * @param adminPort port that alone shows the metrics; 0 for none
 * @param trustedProxies addresses whose X-Forwarded-For is believed
 * @param idleTimeoutMs a connection silent for so long is closed
 * @param minDataRateBytes slowest that a body comes or an answer is taken, after a time of grace [bytes/s]; 0 for no limit
 * @param stopDelayMs how long it says that it is not ready before it stops
 * @param stopTimeoutMs how long requests at work may take when the service stops
 * @param echo whether {@code POST /echo} answers, for measuring
 */
public record Settings(
        String host,
        int port,
        List<String> allowedOrigins,
        int maxBodyBytes,
        int threads,
        int heavyAtOnce,
        int heavyWaitMs,
        int calculationTimeoutMs,
        int maxPriceMs,
        int adminPort,
        List<String> trustedProxies,
        int idleTimeoutMs,
        int minDataRateBytes,
        int stopDelayMs,
        int stopTimeoutMs,
        boolean echo) {
    private static final int HEAP_PER_BODY = 128;

    public Settings {
        allowedOrigins = List.copyOf(allowedOrigins);
        trustedProxies = List.copyOf(trustedProxies);
    }

    /** Some dozens of bodies are at work at once, each many times its size as a tree: the heap must bear them. */
    private static int mostBodyBytes() {
        return (int) Math.min(64 << 20, Runtime.getRuntime().maxMemory() / HEAP_PER_BODY);
    }

    /** Every setting at its default. */
    public static Settings defaults() {
        return from(Map.of());
    }

    /**
     * Reads the environment.
     *
     * @throws IllegalArgumentException naming every setting that cannot be used
     */
    public static Settings from(Map<String, String> environment) {
        SettingsReader reader = new SettingsReader(environment);
        Settings settings = new Settings(
                reader.text(Setting.HOST),
                reader.whole(Setting.PORT, 0, 65_535),
                reader.origins(Setting.ALLOWED_ORIGINS),
                reader.whole(Setting.MAX_BODY_BYTES, 1_000, mostBodyBytes()),
                reader.whole(Setting.THREADS, 1, 1_000),
                reader.whole(Setting.HEAVY_AT_ONCE, 1, 10_000),
                reader.whole(Setting.HEAVY_WAIT_MS, 0, 60_000),
                reader.whole(Setting.CALCULATION_TIMEOUT_MS, 100, 600_000),
                reader.whole(Setting.MAX_PRICE_MS, 20, 1_000_000),
                reader.whole(Setting.ADMIN_PORT, 0, 65_535),
                reader.addresses(Setting.TRUSTED_PROXIES),
                reader.whole(Setting.IDLE_TIMEOUT_MS, 100, 3_600_000),
                reader.whole(Setting.MIN_DATA_RATE_BYTES, 0, 1 << 20),
                reader.whole(Setting.STOP_DELAY_MS, 0, 600_000),
                reader.whole(Setting.STOP_TIMEOUT_MS, 0, 3_600_000),
                reader.yes(Setting.ECHO));
        // The log reads it itself, before anything else runs.
        reader.word(Setting.LOG_FORMAT, "text", "json");
        if (settings.adminPort != 0 && settings.adminPort == settings.port) {
            reader.fault(Setting.ADMIN_PORT, "the same as the port; it takes another one, or 0 for none");
        }
        reader.refuseUnknown();
        reader.refuseFaults();
        return settings;
    }

    /** The same on another port. */
    public Settings onPort(int newPort) {
        return new Settings(
                host,
                newPort,
                allowedOrigins,
                maxBodyBytes,
                threads,
                heavyAtOnce,
                heavyWaitMs,
                calculationTimeoutMs,
                maxPriceMs,
                adminPort,
                trustedProxies,
                idleTimeoutMs,
                minDataRateBytes,
                stopDelayMs,
                stopTimeoutMs,
                echo);
    }
}
