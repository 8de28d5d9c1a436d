package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;

/** How the modules of an array are strung. */
@Schema(name = "ArrayStrings", description = "How the modules of an array are strung.")
public record ArrayStringsView(
        Integer seriesCount,
        Integer parallelCount,

        @Schema(description = "Of a string on the coldest morning [V].")
        Double coldOpenCircuitV,

        @Schema(description = "Of a string on the hottest roof [V].")
        Double hotWorkingV,

        @Schema(description = "How the cold voltage was found: coefficient or nec-690-7-a.")
        @OpenCodes("cold-voltage-method")
        String method) {}
