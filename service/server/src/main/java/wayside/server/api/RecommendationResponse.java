package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A whole system, or the shortfalls of one that does not fit. */
@Schema(name = "Recommendation", description = "A whole system, or the shortfalls of one that does not fit.")
public record RecommendationResponse(
        @Schema(description = "Whether nothing is short.") Boolean feasible,
        List<ShortfallView> shortfalls,

        @Schema(description = "Of the stay whose day takes most.")
        EnergyBudgetView energyBudget,

        BatteryView battery,
        List<ChemistryOptionView> byChemistry,
        PowerUnitView powerUnit,

        @Schema(description = "Absent when nothing is left for the sun, or no sun is to be had.") @Nullable
        SolarView solar,

        @Schema(description = "When the trip drives.") @Nullable
        AlternatorView alternator,

        @Schema(description = "When the trip plugs in.") @Nullable
        ShoreView shore,

        @Schema(description = "When there is an AC load.") @Nullable
        InverterChoiceView inverter,

        @Schema(description = "Battery first, then outward.")
        List<CircuitView> circuits,

        RuleOfThumbView ruleOfThumb,
        List<StepView> derivation,
        List<AssumptionView> assumptions,
        List<CautionView> cautions,

        @Schema(description = "For a figure, by its JSON Pointer in this answer, the id of its step.")
        Map<String, String> steps) {}
