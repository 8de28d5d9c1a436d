package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.OpenCodes;

/** The array and its charge controller. */
@Schema(name = "Solar", description = "The array and its charge controller.")
public record SolarView(
        @Schema(description = "Rated power of the array [W].")
        Double powerW,

        @Schema(description = "Area of the panels [m2].") Double areaM2,

        @Schema(description = "Area of the roof that is free for panels [m2].")
        Double roofAreaM2,

        @Schema(description = "What the worst stay needs; absent when a chance is accepted.") @Nullable
        PowerNeedView needed,

        @Schema(description = "Absent when the array was given.") @Nullable
        BuyableArrayView buyable,

        @Schema(description = "Output of each controller, exactly [A].")
        Double controllerNeededA,

        @Schema(description = "mppt: it tracks the best point of the array.") @OpenCodes("controller-type")
        String controllerType,

        @Schema(description = "Charge controllers, each with its own strings, cables and fuses.")
        Integer controllerCount,

        @Schema(description = "Rated output of each [A].") Double controllerCurrentA,

        @Schema(description = "Highest voltage of the array that it must stand [V].")
        Double controllerMaximumVoltageV,

        ArrayStringsView strings,
        @Schema(description = "The sun of each stay.") List<StaySunView> months,

        @Schema(description = "The stay that asks for the largest array, from 1.")
        Integer worstStay) {}
