package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** State of charge through the trip. */
@Schema(name = "StateOfCharge", description = "State of charge through the trip, in bands. Long trips are thinned.")
public record StateOfChargeView(
        @Schema(description = "Hours since the first midnight.")
        List<Integer> hours,

        @Schema(description = "What one trip in twenty falls short of.")
        List<Double> p05,

        @Schema(description = "What half of the trips fall short of.")
        List<Double> p50,

        @Schema(description = "What one trip in twenty exceeds.")
        List<Double> p95,

        @Schema(description = "State of charge below which a warm battery gives no more.")
        Double floor) {}
