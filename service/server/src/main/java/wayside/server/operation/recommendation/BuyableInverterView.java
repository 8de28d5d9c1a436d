package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** The inverters that it is: the next size that exists. */
@Schema(name = "BuyableInverter", description = "The inverters that it is: the next size that exists.")
public record BuyableInverterView(
        @Schema(description = "Inverters that work as one.") Integer count,

        @Schema(description = "Rated output of each [W].") Double continuousW) {}
