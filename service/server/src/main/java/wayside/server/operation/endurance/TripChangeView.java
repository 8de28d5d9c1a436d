package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.MessageParameterView;
import wayside.server.answer.OpenCodes;

/** A change with which a smaller system is enough. */
@Schema(
        name = "TripChange",
        description =
                "The least of a change to the trip, or to the battery's place, with which a smaller system is enough.")
public record TripChangeView(
        @Schema(description = "Stable, kebab-case.", example = "more-driving") @OpenCodes("change")
        String code,

        @Schema(description = "The change in English.") String text,

        @Schema(
                description =
                        "What the message is about, by name. The list of codes says which parameters each code has.")
        Map<String, MessageParameterView> parameters,

        @Schema(description = "Chance that the smaller system runs flat with it.")
        Double chanceOfRunningFlat,

        @Schema(
                description =
                        "Chance with half an hour less of driving, a longer way between hookups, or a night more; absent where there is no such step.")
        @Nullable
        Double chanceOneStepLess) {}
