package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** Whether the average day brings in what it takes. */
@Schema(name = "Balance", description = "Whether the average day brings in what it takes.")
public record BalanceView(
        @Schema(
                description =
                        "What sun, engine and hookup offer on the average day, less what is wanted and lost [Wh]; below 0"
                                + " the trip lives off the battery.")
        Double dailyWh,

        @Schema(
                description =
                        "Nights after which a full battery would be empty at that; absent where the day is balanced within a"
                                + " fiftieth.")
        @Nullable
        Double emptyAfterNights) {}
