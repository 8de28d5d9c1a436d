package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a usual day takes out of the battery. */
@Schema(description = "What a usual day takes out of the battery.")
public record EnergyBudgetResponse(
        @Schema(description = "All loads at their plugs [Wh].")
        Double dailyLoadWh,

        @Schema(description = "Standby and inverter [Wh].") Double dailyLossWh,
        @Schema(description = "Out of the battery [Wh].") Double dailyTotalWh,

        @Schema(description = "The same at the nominal bus voltage [Ah].")
        Double dailyTotalAh,

        @Schema(description = "Nominal voltage of the battery bus [V].")
        Double busVoltageV,

        @Schema(description = "Direct-current loads.") SupplyDemandView dc,

        @Schema(description = "Loads behind the inverter; peakA is the battery's current into the inverter.")
        SupplyDemandView ac,

        @Schema(description = "Mean power out of the battery in each local hour [W]; sums to dailyTotalWh.")
        List<Double> hourlyW,

        @Schema(description = "In the order of the request.")
        List<LoadShareView> loads,

        LossesView losses,

        @Schema(description = "When there is an AC load.") @Nullable
        InverterView inverter,

        @Schema(description = "Left out when return=minimal is preferred.") @Nullable
        List<StepView> derivation,

        List<AssumptionView> assumptions,
        List<CautionView> cautions,

        @Schema(
                description = "For a figure, by its JSON Pointer in this answer, the id of its step; left out with the"
                        + " derivation.")
        @Nullable
        Map<String, String> steps) {}
