package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;

/** What a bank weighs and stands in. */
@Schema(
        name = "BankBox",
        description =
                "What the battery weighs and the box it stands in: how slowly it follows the air follows from them.")
public record BankBoxInput(
        @Schema(description = "Mass of the battery [kg].", example = "30") @DecimalMin("0.1") @DecimalMax("10000")
        Double massKg,

        @Schema(description = "Surface of the box, all sides together [m2].", example = "0.8")
        @DecimalMin("0.01")
        @DecimalMax("100")
        Double areaM2,

        @Schema(description = "Thickness of its wooden walls [m]; 0.012 when left open.", example = "0.012")
        @DecimalMin("0")
        @DecimalMax("0.2")
        @Nullable
        Double plywoodM,

        @Schema(description = "Thickness of foam round it [m]; none when left open.", example = "0.02")
        @DecimalMin("0")
        @DecimalMax("0.5")
        @Nullable
        Double foamM) {}
