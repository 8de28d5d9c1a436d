package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;

/** Where the energy of a trip comes from. */
@Schema(name = "EnergySources", description = "Where the energy comes from, mean of all lives of the whole trip [Wh].")
public record EnergySourcesView(Double solarWh, Double alternatorWh, Double shoreWh) {}
