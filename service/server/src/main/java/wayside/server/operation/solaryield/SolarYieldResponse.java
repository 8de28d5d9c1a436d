package wayside.server.operation.solaryield;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.AssumptionView;
import wayside.server.answer.CautionView;
import wayside.server.answer.DerivationView;
import wayside.server.answer.EngineView;

/** What an array brings, month by month. */
@Schema(name = "SolarYieldAnswer", description = "What an array brings, month by month.")
public record SolarYieldResponse(
        @Schema(description = "Rated power of the array [W].")
        Double solarPowerW,

        @Schema(description = "The months, in the order asked.")
        List<YieldMonthView> months,

        @Schema(description = "When the modules were described.") @Nullable
        StringsView strings,

        List<AssumptionView> assumptions,
        List<CautionView> cautions,
        EngineView engine,

        @Schema(description = "The way to every figure, or to those that were asked for; left out when none was.")
        @Nullable
        DerivationView derivation) {}
