package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;

/** What a change takes off a chance. */
@Schema(
        name = "SparedChance",
        description =
                "What the change takes off the chance, and the range that lies in with 95 % confidence, from the same runs with it"
                        + " and without. Where the range reaches below 0 it may be luck.")
public record SparedChanceView(Double value, Double low, Double high) {}
