package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import wayside.server.answer.OpenCodes;

/** How the modules of an array are strung. */
@Schema(name = "ArrayStrings", description = "How the modules of an array are strung.")
public record ArrayStringsView(
        @Schema(description = "Modules in each string.") Integer seriesCount,
        @Schema(description = "Strings.") Integer parallelCount,

        @Schema(description = "Rated power of each module [W]; all of them together are the array.")
        Double modulePowerW,

        @Schema(description = "Open-circuit voltage of a string on the coldest morning [V].")
        Double coldOpenCircuitV,

        @Schema(description = "Working voltage of a string on the hottest roof [V].")
        Double hotWorkingV,

        @Schema(
                description = "What the other strings of a controller bring into a fault in one of them [A]. Above the"
                        + " largest series fuse each string has a fuse of its own, in circuits.")
        Double otherStringsA,

        @Schema(description = "Largest series fuse that the module allows [A].")
        Double largestSeriesFuseA,

        @Schema(description = "How the cold voltage was found: coefficient or nec-690-7-a.")
        @OpenCodes("cold-voltage-method")
        String method) {}
