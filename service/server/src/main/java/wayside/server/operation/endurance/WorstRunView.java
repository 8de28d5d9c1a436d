package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.MessageParameterView;
import wayside.server.answer.OpenCodes;

/** The life of the trip that ended worst. */
@Schema(name = "WorstRun", description = "The life of the trip that ended worst.")
public record WorstRunView(
        @Schema(description = "Stable, kebab-case: whether it ran flat.") @OpenCodes("worst-run")
        String code,

        @Schema(description = "The message in English, with figures rounded.")
        String text,

        @Schema(
                description =
                        "What the message is about, by name. The list of codes says which parameters each code has.")
        Map<String, MessageParameterView> parameters,

        @Schema(description = "Its place in the row, from 0.")
        Integer run,

        @Schema(description = "Hours since the first midnight; absent if it never ran flat.") @Nullable
        Integer firstFlatHour,

        @Schema(description = "Hours in which vital or essential loads went short.")
        Integer flatHours,

        Double unmetWh,

        @Schema(description = "Lowest state of charge [share].")
        Double lowestShare,

        Double solarWh) {}
