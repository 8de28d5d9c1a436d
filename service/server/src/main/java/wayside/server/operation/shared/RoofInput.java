package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.ExactlyOneOf;

/** The room for panels on the roof. */
@Schema(name = "Roof", description = "The room for panels on the roof; an area of 6 m2 when left open.")
@ExactlyOneOf({"areaM2", "rectangles"})
public record RoofInput(
        @Schema(description = "Free of vents and rails [m2].", example = "4.5")
        @DecimalMin("0.01")
        @DecimalMax("1000")
        @Nullable
        Double areaM2,

        @Schema(description = "Free rectangles: panels lie in them in rows, either way round.")
        @Size(min = 1, max = 50)
        @Nullable
        List<@Valid RectangleInput> rectangles) {
    /** A free rectangle. */
    @Schema(name = "RoofRectangle", description = "A free rectangle of the roof.")
    public record RectangleInput(
            @Schema(description = "[m]", example = "2.2") @DecimalMin(Limits.LEAST_LENGTH_M) @DecimalMax("100")
            Double lengthM,

            @Schema(description = "[m]", example = "1.1") @DecimalMin(Limits.LEAST_LENGTH_M) @DecimalMax("100")
            Double widthM) {}
}
