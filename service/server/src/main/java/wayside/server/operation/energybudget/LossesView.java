package wayside.server.operation.energybudget;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** Where energy goes that no load gets. */
@Schema(name = "Losses", description = "Where energy goes that no load gets [Wh per day].")
public record LossesView(
        @Schema(description = "Monitors, outlets and electronics.")
        Double standbyWh,

        @Schema(description = "The inverter standing by.") Double inverterIdleWh,

        @Schema(description = "Turning direct into alternating current.")
        Double inverterConversionWh,

        @Schema(description = "The DC converter, standing by and converting; left out where none is needed.") @Nullable
        Double converterWh,

        @Schema(description = "The heater of the battery on a cold day of the stay; left out where it has none.")
        @Nullable
        Double heaterWh) {}
