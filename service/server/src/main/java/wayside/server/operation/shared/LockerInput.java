package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.ExactlyOneOf;
import wayside.server.binding.rule.OnlyWith;

/** Where the bank is to stand. */
@Schema(
        name = "Locker",
        description = "Where the bank is to stand: its three sides, or its volume. Batteries stand upright.")
@ExactlyOneOf({"lengthMm", "volumeL"})
@OnlyWith(
        value = {"widthMm", "heightMm"},
        beside = "lengthMm",
        needed = true)
public record LockerInput(
        @Schema(description = "Inside [mm].", example = "700") @DecimalMin("1") @DecimalMax("100000") @Nullable
        Double lengthMm,

        @Schema(description = "Inside [mm].", example = "400") @DecimalMin("1") @DecimalMax("100000") @Nullable
        Double widthMm,

        @Schema(description = "Inside [mm].", example = "300") @DecimalMin("1") @DecimalMax("100000") @Nullable
        Double heightMm,

        @Schema(description = "Inside [L], when only that is known.") @DecimalMin("0.1") @DecimalMax("100000") @Nullable
        Double volumeL) {}
