package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** The life of the trip that ended worst. */
@Schema(name = "WorstRun", description = "The life of the trip that ended worst.")
public record WorstRunView(
        String text,

        @Schema(description = "Its place in the row, from 0.")
        Integer run,

        @Schema(description = "Hours since the first midnight; absent if it never ran flat.") @Nullable
        Integer firstFlatHour,

        @Schema(description = "Hours in which essential loads went short.")
        Integer flatHours,

        Double unmetWh,

        @Schema(description = "Lowest state of charge [share].")
        Double lowestShare,

        Double solarWh) {}
