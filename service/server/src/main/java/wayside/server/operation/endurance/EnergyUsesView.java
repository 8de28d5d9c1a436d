package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;

/** Where the energy of a trip goes. */
@Schema(
        name = "EnergyUses",
        description = "Where the energy goes, mean of all lives of the whole trip [Wh]; adds up to the sources.")
public record EnergyUsesView(
        @Schema(description = "Energy at the loads' plugs [Wh].")
        Double loadsWh,

        @Schema(description = "Inverter, standing by and converting, and the conversion of a DC converter.")
        Double inverterLossWh,

        @Schema(description = "Outlets, monitor, alarms.") Double standbyWh,

        @Schema(description = "The heater of the battery; 0 where it has none.")
        Double heaterWh,

        @Schema(description = "Energy lost on the way into the cells, out of them, and while they stand [Wh].")
        Double storageLossWh,

        @Schema(description = "What the battery holds more at the end than at the start.")
        Double storeGainWh) {}
