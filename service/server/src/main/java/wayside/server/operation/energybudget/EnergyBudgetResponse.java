package wayside.server.operation.energybudget;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.AssumptionView;
import wayside.server.answer.CautionView;
import wayside.server.answer.DerivationView;
import wayside.server.answer.EngineView;

/** What a usual day takes out of the battery. */
@Schema(name = "EnergyBudgetAnswer", description = "What a usual day takes out of the battery.")
public record EnergyBudgetResponse(
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

        @Schema(description = "Loads behind the inverter; peakA is the battery's current into the inverter.")
        SupplyDemandView ac,

        @Schema(description = "Mean power out of the battery in each local hour [W]; sums to dailyTotalWh.")
        List<Double> hourlyW,

        @Schema(description = "The loads, in the order of the request.")
        List<LoadShareView> loads,

        LossesView losses,

        @Schema(description = "When there is an AC load.") @Nullable
        InverterView inverter,

        List<AssumptionView> assumptions,
        List<CautionView> cautions,
        EngineView engine,

        @Schema(description = "The way to every figure, or to those that were asked for; left out when none was.")
        @Nullable
        DerivationView derivation) {}
