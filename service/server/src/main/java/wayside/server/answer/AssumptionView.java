package wayside.server.answer;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** Something that was not given. */
@Schema(
        name = "Assumption",
        description = "A default that the request left open, or a convention that no field of it changes.")
public record AssumptionView(
        @Schema(description = "JSON Pointer of the field that overrides it; absent for a convention.") @Nullable
        String field,

        @Schema(description = "What it is.") String label,
        @Schema(description = "The value used, as text.") String value,

        @Schema(description = "The value used, when it is a number.") @Nullable
        Double number,

        @Schema(description = "Unit of the number, unless it is a plain one.") @OpenCodes("unit") @Nullable
        String unit,

        @Schema(description = "Why this value.") String reason,

        @Schema(
                description = "The kind of ground: standard, handbook, paper, dataset, definition, common-practice or"
                        + " price-book.")
        @OpenCodes("basis")
        String basis,

        @Schema(description = "Publisher, document and edition, or that there is none.")
        String title) {}
