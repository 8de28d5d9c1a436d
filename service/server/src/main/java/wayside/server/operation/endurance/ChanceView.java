package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;

/** A chance and the range it lies in. */
@Schema(
        name = "Chance",
        description =
                "A chance and the range that it lies in with 95 % confidence as far as the draw goes: more runs narrow it. What the"
                        + " model does not know is not in it; chances below 0.01 come true two to three times as often.")
public record ChanceView(
        @Schema(description = "Share of the lives of the trip.")
        Double value,

        Double low,
        Double high) {}
