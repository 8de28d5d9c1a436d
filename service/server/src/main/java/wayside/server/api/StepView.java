package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One step of a derivation. */
@Schema(name = "Step", description = "One step of a derivation; stands after the steps that it uses.")
public record StepView(
        @Schema(description = "Unique in the answer, the same for the same request.")
        String id,

        @Schema(description = "What the value is.") String label,

        @Schema(description = "In words and symbols; absent for what was given, assumed or looked up.") @Nullable
        String formula,

        @Schema(description = "In the order of the formula.")
        List<StepInputView> inputs,

        @Schema(description = "The result.") Double value,

        @Schema(description = "Unit of the result; 1 for a plain number.")
        String unit,

        @Schema(
                description = "What stands behind it: standard, handbook, paper, dataset, definition, common-practice,"
                        + " price-book, given.")
        String basis,

        @Schema(description = "Publisher, document and edition, or that there is none.")
        String title,

        @Schema(description = "Section, table or equation.") @Nullable
        String clause,

        @Schema(description = "Why, for an assumption; which row, for a table; which field, for what was given.")
        @Nullable
        String reason) {}
