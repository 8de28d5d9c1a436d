package wayside.server.answer;

import io.swagger.v3.oas.annotations.media.Schema;

/** A fixed figure of an expression. */
@Schema(name = "Constant", description = "A fixed figure of an expression.")
public record ConstantView(
        @Schema(description = "Its symbol in the expression.")
        String symbol,

        @Schema(description = "The figure.") Double value,

        @Schema(description = "Unit of the figure; 1 for a plain number.") @OpenCodes("unit")
        String unit) {}
