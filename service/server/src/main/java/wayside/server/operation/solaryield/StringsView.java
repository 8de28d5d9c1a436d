package wayside.server.operation.solaryield;

import io.swagger.v3.oas.annotations.media.Schema;
import wayside.server.answer.OpenCodes;

/** Whether the strings suit the charge controller. */
@Schema(name = "StringsCheck", description = "Whether the modules' strings suit the charge controller, cold and hot.")
public record StringsView(
        @Schema(description = "Whether the string stands both the coldest morning and the hottest roof.")
        Boolean fits,

        Integer seriesCount,
        Integer parallelCount,

        @Schema(description = "Fewer do not charge the bank on the hottest roof.")
        Integer smallestSeriesCount,

        @Schema(description = "More overload the controller on the coldest morning.")
        Integer largestSeriesCount,

        @Schema(description = "Open-circuit voltage of the string on the coldest morning [V].")
        Double coldOpenCircuitV,

        @Schema(description = "Working voltage of the string on the hottest roof [V].")
        Double hotWorkingV,

        @Schema(description = "How the cold voltage was found: coefficient or nec-690-7-a.")
        @OpenCodes("cold-voltage-method")
        String method,

        Double controllerMaximumVoltageV,

        @Schema(description = "Highest charging voltage of the bank [V].")
        Double chargingVoltageV,

        @Schema(description = "1.25 times the short-circuit current [A].")
        Double maximumCurrentA,

        @Schema(description = "1.5625 times the short-circuit current, for cable and fuse [A].")
        Double conductorCurrentA,

        @Schema(description = "Share of its best power that a controller without a tracker would keep.")
        Double withoutTrackerShare) {}
