package wayside.server.intake;

import java.util.List;

/**
 * What the way in and out needs to know of the settings.
 *
 * @param maxBodyBytes largest body
 * @param maxFormBytes largest form
 * @param bodyMemoryBytes for all bodies at once
 * @param answerMemoryBytes for all large answers that are not yet taken
 * @param uploadsAtOnce most forms at once
 * @param reading how fast a body must come
 * @param sending how fast an answer must be taken
 * @param trustedProxies addresses whose X-Forwarded-For is believed
 * @param adminPort port that alone shows the metrics; 0 when the port of all does
 */
public record FrontSettings(
        long maxBodyBytes,
        long maxFormBytes,
        long bodyMemoryBytes,
        long answerMemoryBytes,
        int uploadsAtOnce,
        Pace reading,
        Pace sending,
        List<String> trustedProxies,
        int adminPort) {
    public FrontSettings {
        trustedProxies = List.copyOf(trustedProxies);
    }
}
