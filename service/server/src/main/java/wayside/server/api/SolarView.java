package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** The array and its charge controller. */
@Schema(name = "Solar", description = "The array and its charge controller.")
public record SolarView(
        @Schema(description = "Rated [W].") Double powerW,
        @Schema(description = "Of panel [m2].") Double areaM2,

        @Schema(description = "mppt: it tracks the best point of the array.") @OpenCodes("controller-type")
        String controllerType,

        @Schema(description = "Rated output [A].") Double controllerCurrentA,

        @Schema(description = "Highest voltage of the array that it must stand [V].")
        Double controllerMaximumVoltageV,

        ArrayStringsView strings,
        @Schema(description = "By stay.") List<StaySunView> months,

        @Schema(description = "The stay that asks for the largest array, from 1.")
        Integer worstStay) {}
