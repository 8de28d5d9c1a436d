package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A system that a small change to the trip would make enough. */
@Schema(
        name = "SmallerSystem",
        description =
                "The battery by days of autonomy, as it can be bought, beside the array that was found, where it is not enough for"
                        + " the trip as it was asked, and the smallest changes with which it is.")
public record SmallerSystemView(
        @Schema(description = "Rated energy of its battery [Wh].")
        Double nominalEnergyWh,

        @Schema(description = "Rated power of its array [W].")
        Double solarPowerW,

        @Schema(
                description =
                        "Rated output of its charger on the engine [A]; absent where nothing drives on the trip as it was asked.")
        @Nullable
        Double alternatorChargerA,

        List<TripChangeView> changes) {}
