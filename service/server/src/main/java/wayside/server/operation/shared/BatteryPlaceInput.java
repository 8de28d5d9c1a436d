package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.AtMostOneOf;

/** Where the battery stands, and how warm it is there. */
@Schema(name = "BatteryPlace", description = "Where the battery stands, how warm it is there and what keeps it warm.")
@AtMostOneOf({"lagHours", "box"})
@HeatedThroughALag
public record BatteryPlaceInput(
        @Schema(
                description =
                        "Where the battery stands: in the living space, under its floor, or outside in a place that nothing heats; outside when left open, unless a recommendation by chance finds that frost would keep charge out of it there.",
                example = "cabin")
        @Nullable
        CompartmentCode where,

        @Schema(
                description =
                        "How much warmer than the outside air it is there, a difference [K]; when left open 0 outside, 5"
                                + " under the floor, 15 in the cabin. In the cabin and under its floor this is the most: nobody"
                                + " heats a living space beyond 20 C.",
                example = "15")
        @DecimalMin("-20")
        @DecimalMax("50")
        @Nullable
        Double warmerByK,

        @Schema(
                description =
                        "How slowly the battery follows the air round it, its time constant [h]; 8 when left open and no box"
                                + " is given, 0 for one that is always as warm as the air.",
                example = "8")
        @DecimalMin("0")
        @DecimalMax("200")
        @Nullable
        Double lagHours,

        @Valid @Nullable BankBoxInput box,

        @Schema(description = "A heater on the battery; none when left open.") @Valid @Nullable
        BatteryHeaterInput heater) {}
