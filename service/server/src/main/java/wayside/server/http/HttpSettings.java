package wayside.server.http;

import java.util.List;

/** What the handlers need to know of the settings. */
public record HttpSettings(
        List<String> allowedOrigins, int maxBodyBytes, int heavyAtOnce, int heavyWaitMs, boolean echo) {
    public HttpSettings {
        allowedOrigins = List.copyOf(allowedOrigins);
    }
}
