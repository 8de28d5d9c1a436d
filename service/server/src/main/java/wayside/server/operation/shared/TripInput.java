package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Size;
import java.util.List;

/** Where and when the customer travels. */
@Schema(name = "Trip", description = "Where and when the customer travels: stays in order.")
public record TripInput(
        @Schema(description = "Stays in order; 366 nights in all at most.")
        @Size(min = 1, max = Limits.STAYS)
        @NightsInAll(Limits.NIGHTS)
        List<@Valid StayInput> stays) {}
