package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;

/** How the panels sit. */
@Schema(name = "Panel", description = "How the panels sit; flat on the roof when left open.")
public record PanelInput(
        @Schema(description = "Tilt from the horizontal; 0 when left open.", example = "0")
        @DecimalMin("0")
        @DecimalMax("90")
        @Nullable
        Double tiltDegrees,

        @Schema(
                description = "The way they face, clockwise from north; towards the equator when left open.",
                example = "180")
        @DecimalMin("0")
        @DecimalMax("360")
        @Nullable
        Double azimuthDegrees,

        @Schema(
                description = "Share of the irradiation lost to roof gear and trees; 0.03 when left open.",
                example = "0.05")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable
        Double shadedShare,

        @Schema(
                description =
                        "Share of the irradiation lost to snow that lies on the panels, on the days that are asked about; none"
                                + " when left open.",
                example = "0.2")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable
        Double snowCoveredShare) {}
