package wayside.server;

import java.util.Arrays;
import java.util.stream.Collectors;

/** The settings, each an environment variable. */
enum Setting {
    HOST("", "address to listen on; empty for all"),
    PORT("8080", "port to listen on; 0 for any that is free"),
    ALLOWED_ORIGINS("*", "origins whose pages may call the service, parted by commas; * for any"),
    MAX_BODY_BYTES("262144", "largest request body; a typical year beside it may have 3 MiB"),
    THREADS(
            Integer.toString(Math.max(4, 2 * Runtime.getRuntime().availableProcessors())),
            "threads that work on requests; by default two for each core, at least 4"),
    HEAVY_AT_ONCE(
            Integer.toString(Math.max(2, Runtime.getRuntime().availableProcessors())),
            "most long calculations at once; by default the number of cores, at least 2"),
    HEAVY_WAIT_MS("2000", "longest wait for a place among the long ones; what would wait longer is refused"),
    CALCULATION_TIMEOUT_MS("20000", "longest that a calculation may take"),
    MAX_PRICE_MS(
            "1000", "dearest request that is taken, in ms of a core; the contract says what each operation may ask"),
    ADMIN_PORT("0", "port that alone shows /metrics, and /health beside it; 0 for none: then the port shows them"),
    TRUSTED_PROXIES("", "addresses of proxies whose X-Forwarded-For says whose a request is, parted by commas"),
    IDLE_TIMEOUT_MS("30000", "a connection silent for so long is closed"),
    MIN_DATA_RATE_BYTES(
            "4000", "slowest that a body comes or an answer is taken, bytes a second, after 10 s; 0 for no limit"),
    STOP_DELAY_MS("0", "how long a service that is to stop says that it is not ready before it does"),
    STOP_TIMEOUT_MS("10000", "how long requests at work may take when the service stops"),
    LOG_FORMAT("text", "text or json"),
    ECHO("false", "true opens POST /echo, which sends its body back, up to ?bytes= of it; for measuring");

    /** Begins the name of every setting's variable. */
    static final String PREFIX = "WAYSIDE_";

    private final String standard;
    private final String meaning;

    Setting(String standard, String meaning) {
        this.standard = standard;
        this.meaning = meaning;
    }

    /** Name of the environment variable. */
    String variable() {
        return PREFIX + name();
    }

    String standard() {
        return standard;
    }

    /** The table of all settings, for people. */
    static String table() {
        String head = String.format("%-28s %-10s %s%n", "variable", "default", "meaning");
        return head
                + Arrays.stream(values())
                        .map(setting -> String.format(
                                "%-28s %-10s %s%n", setting.variable(), setting.standard, setting.meaning))
                        .collect(Collectors.joining());
    }
}
