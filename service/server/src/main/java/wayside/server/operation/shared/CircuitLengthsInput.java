package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;

/** One-way lengths of the main circuits. */
@Schema(
        name = "CircuitLengths",
        description = "One-way lengths of the main circuits [m]; a usual length when left open.")
public record CircuitLengthsInput(
        @Schema(description = "One way from the battery to the busbar [m].", example = "1")
        @DecimalMin(Limits.LEAST_LENGTH_M)
        @DecimalMax(Limits.LENGTH_M)
        @Nullable
        Double main,

        @Schema(description = "One way from the busbar to the inverter [m].", example = "1.5")
        @DecimalMin(Limits.LEAST_LENGTH_M)
        @DecimalMax(Limits.LENGTH_M)
        @Nullable
        Double inverter,

        @Schema(description = "One way from the charge controller to the busbar [m].")
        @DecimalMin(Limits.LEAST_LENGTH_M)
        @DecimalMax(Limits.LENGTH_M)
        @Nullable
        Double controllerToBattery,

        @Schema(description = "One way from the roof to the charge controller [m].")
        @DecimalMin(Limits.LEAST_LENGTH_M)
        @DecimalMax(Limits.LENGTH_M)
        @Nullable
        Double arrayToController,

        @Schema(description = "One way from the starter battery to the charger between alternator and bank [m].")
        @DecimalMin(Limits.LEAST_LENGTH_M)
        @DecimalMax(Limits.LENGTH_M)
        @Nullable
        Double alternatorCharger,

        @Schema(description = "One way from that charger to the busbar [m].")
        @DecimalMin(Limits.LEAST_LENGTH_M)
        @DecimalMax(Limits.LENGTH_M)
        @Nullable
        Double alternatorChargerToBusbar,

        @Schema(description = "One way from the shore charger to the busbar [m].")
        @DecimalMin(Limits.LEAST_LENGTH_M)
        @DecimalMax(Limits.LENGTH_M)
        @Nullable
        Double shoreCharger,

        @Schema(description = "One way from the busbar to the fuse box of the DC loads [m].")
        @DecimalMin(Limits.LEAST_LENGTH_M)
        @DecimalMax(Limits.LENGTH_M)
        @Nullable
        Double distribution) {}
