package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What an array brings, month by month. */
@Schema(description = "What an array brings, month by month.")
public record SolarYieldResponse(
        @Schema(description = "Rated power of the array [W].")
        Double solarPowerW,

        @Schema(description = "In the order asked.") List<YieldMonthView> months,

        @Schema(description = "When the modules were described.") @Nullable
        StringsView strings,

        @Schema(description = "Left out when return=minimal is preferred.") @Nullable
        List<StepView> derivation,

        List<AssumptionView> assumptions,
        List<CautionView> cautions,

        @Schema(
                description = "For a figure, by its JSON Pointer in this answer, the id of its step; left out with the"
                        + " derivation.")
        @Nullable
        Map<String, String> steps) {}
