package wayside.server.operation.energybudget;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a usual day takes out of the battery. */
@Schema(name = "EnergyBudget", description = "What a usual day takes out of the battery.")
public record EnergyBudgetView(
        @Schema(description = "All loads at their plugs [Wh].")
        Double dailyLoadWh,

        @Schema(description = "Standby and inverter [Wh].") Double dailyLossWh,

        @Schema(description = "Energy of a day out of the battery [Wh].")
        Double dailyTotalWh,

        @Schema(description = "Charge of a day out of the battery at the nominal bus voltage [Ah].")
        Double dailyTotalAh,

        @Schema(description = "Nominal voltage of the battery bus [V].")
        Double busVoltageV,

        @Schema(description = "Direct-current loads.") SupplyDemandView dc,
        @Schema(description = "Loads behind the inverter.") SupplyDemandView ac,

        @Schema(description = "Mean power out of the battery in each local hour [W].")
        List<Double> hourlyW,

        @Schema(description = "The loads, in the order of the request.")
        List<LoadShareView> loads,

        LossesView losses,

        @Schema(description = "When there is an AC load.") @Nullable
        InverterView inverter,

        @Schema(description = "What a hookup gives on a day that has one, when AC loads run straight off it.") @Nullable
        HookupView hookup) {}
