package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** A figure that scatters in the trade. */
@Schema(name = "TypicalRange", description = "A figure that scatters in the trade.")
public record TypicalRangeView(Double low, Double typical, Double high) {}
