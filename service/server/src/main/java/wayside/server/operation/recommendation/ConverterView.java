package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** What feeds DC loads of another voltage than the bus. */
@Schema(name = "Converter", description = "What feeds DC loads of another voltage than the bus.")
public record ConverterView(
        @Schema(description = "Nominal, at its output [V].") Double outputVoltageV,

        @Schema(description = "All DC loads running and the hardest starting, at its output [A].")
        Double neededCurrentA,

        @Schema(description = "Equal ones that share out the loads.")
        Integer count,

        @Schema(description = "Rated output of each [A].") Double ratedCurrentA,

        @Schema(description = "Standing by and converting [Wh per day].")
        Double dailyLossWh) {}
