package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.OnlyWith;

/** How sure the customer wants to be. */
@Schema(
        name = "Target",
        description =
                "How sure the customer wants to be: days on a full battery, a chance, or both, which then both hold. An"
                        + " objective goes with a chance, prices go with the objective price.")
@OnlyWith(
        value = {"objective", "comfortServedShare", "mustBalance", "mayDriveHours"},
        beside = "chanceOfRunningFlat")
@OnlyWith(
        value = {"bankPricePerWh", "arrayPricePerW"},
        beside = "objective",
        is = "price",
        needed = true)
public record TargetInput(
        @Schema(description = "Days that a full bank carries the loads with no charging at all.", example = "2")
        @DecimalMin("0.1")
        @DecimalMax("30")
        @Nullable
        Double autonomyDays,

        @Schema(
                description = "Accepted chance that a vital or essential load goes short on the trip.",
                example = "0.05")
        @DecimalMin("0.001")
        @DecimalMax("0.9")
        @Nullable
        Double chanceOfRunningFlat,

        @Schema(
                description =
                        "What to choose battery and array by among those that are sure enough; the lightest pair when"
                                + " left open. By price only with your own prices.")
        @Nullable
        ObjectiveCode objective,

        @Schema(
                description =
                        "Share that comfort loads must get of the energy that they want, on the mean of such trips; 0.9 where comfort loads are listed.",
                example = "0.9")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable
        Double comfortServedShare,

        @Schema(description = "Whether the average day must bring in what it takes; it need not when left open.")
        @Nullable
        Boolean mustBalance,

        @Schema(
                description =
                        "Hours a day that you would drive more than the trip says, if need be [h]. They are used, by half hours and"
                                + " as few as will do, where without them no system fits or its battery would be one of more than"
                                + " five days.",
                example = "1.5")
        @DecimalMin("0.5")
        @DecimalMax("12")
        @Nullable
        Double mayDriveHours,

        @Schema(description = "Your price of a watt-hour of battery, in any money.", example = "0.3")
        @DecimalMin("0")
        @DecimalMax("1000000")
        @Nullable
        Double bankPricePerWh,

        @Schema(description = "Your price of a watt of panel, in the same money.", example = "0.8")
        @DecimalMin("0")
        @DecimalMax("1000000")
        @Nullable
        Double arrayPricePerW) {}
