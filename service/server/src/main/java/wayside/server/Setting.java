package wayside.server;

import java.util.Arrays;
import java.util.stream.Collectors;

/** The settings, each an environment variable. */
enum Setting {
    HOST("", "address to listen on; empty for all"),
    PORT("8080", "port to listen on; 0 for any that is free"),
    ALLOWED_ORIGINS("*", "origins whose pages may call the service, parted by commas; * for any"),
    MAX_BODY_BYTES("262144", "largest request body; a typical year beside it may have 3 MiB"),
    THREADS("64", "most threads that answer requests"),
    HEAVY_AT_ONCE(
            Integer.toString(Math.max(2, Runtime.getRuntime().availableProcessors())),
            "most heavy calculations at once; by default the number of cores, at least 2"),
    HEAVY_WAIT_MS("2000", "longest wait for a place among the heavy ones before 503"),
    IDLE_TIMEOUT_MS("30000", "a connection silent for so long is closed"),
    MIN_DATA_RATE_BYTES("500", "slowest sending of a body, bytes a second; 0 for no limit"),
    STOP_TIMEOUT_MS("10000", "how long requests at work may take when the service stops"),
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
