package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;

/** A place on Earth, WGS 84. */
@Schema(name = "Place", description = "A place on Earth, WGS 84.")
public record PlaceInput(
        @Schema(description = "Degrees, north positive.", example = "46.5") @DecimalMin("-90") @DecimalMax("90")
        Double latitude,

        @Schema(description = "Degrees, east positive.", example = "9.8") @DecimalMin("-180") @DecimalMax("180")
        Double longitude,

        @Schema(description = "Height above the sea [m].", example = "1700")
        @DecimalMin("-500")
        @DecimalMax("9000")
        @Nullable
        Double elevationM) {}
