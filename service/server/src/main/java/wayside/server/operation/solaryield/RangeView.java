package wayside.server.operation.solaryield;

import io.swagger.v3.oas.annotations.media.Schema;

/** Where a figure lies in eight cases of ten. */
@Schema(name = "Range", description = "Where the figure lies in eight cases of ten.")
public record RangeView(Double low, Double high) {}
