package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;

/** A chance and the range it lies in. */
@Schema(name = "Chance", description = "A chance and the range that it lies in with 95 % confidence.")
public record ChanceView(
        @Schema(description = "Share of the lives of the trip.")
        Double value,

        Double low,
        Double high) {}
