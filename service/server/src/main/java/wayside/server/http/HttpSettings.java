package wayside.server.http;

import java.util.List;

/**
 * What the handlers need to know of the settings.
 *
 * @param workers threads that work on requests
 * @param heavyAtOnce most long calculations at once
 * @param heavyWaitMs longest wait for a place among them
 * @param calculationMs longest that one may take
 * @param maxPriceMs dearest request that is taken [ms of a core]
 */
public record HttpSettings(
        List<String> allowedOrigins,
        int maxBodyBytes,
        int workers,
        int heavyAtOnce,
        int heavyWaitMs,
        int calculationMs,
        int maxPriceMs,
        boolean echo) {
    public HttpSettings {
        allowedOrigins = List.copyOf(allowedOrigins);
    }
}
