package wayside.server.answer;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One step of a derivation. */
@Schema(name = "Step", description = "One step of a derivation.")
public record StepView(
        @Schema(description = "Unique in the answer, and the same for the same thing whatever else is asked.")
        String id,

        @Schema(
                description = "given: a field of the request. default: left open, a field overrides it. convention: no"
                        + " field does. looked-up: a row of a table. computed: an expression or a named operation.")
        @OpenCodes("step-kind")
        String kind,

        @Schema(description = "What the value is.") String label,

        @Schema(description = "The value.") Double value,

        @Schema(description = "Unit of the value; 1 for a plain number.") @OpenCodes("unit")
        String unit,

        @Schema(description = "JSON Pointer into the request: the field that was given, or that overrides a default.")
        @Nullable
        String field,

        @Schema(description = "Name of the table that the value was read from; GET /v1/reference lists them.") @Nullable
        String table,

        @Schema(description = "The row of that table.") @Nullable
        String row,

        @Schema(
                description = "What was evaluated, over the symbols of inputs and constants: + - * / ^, a space for a"
                        + " product, parentheses, pi and the functions min, max, ceil, floor, abs, sqrt, exp, ln, sin,"
                        + " cos, tan, asin, acos; sum, product, min and max of one argument run along lists of inputs.",
                example = "E = P h d")
        @Nullable
        String expression,

        @Schema(description = "What was done where no expression holds it, from a closed list.")
        @OpenCodes("operation")
        @Nullable
        String operation,

        @Schema(description = "Fixed figures of the expression, when it has any.") @Nullable
        List<ConstantView> constants,

        @Schema(description = "The steps that it uses, when it uses any.") @Nullable
        List<StepInputView> inputs,

        @Schema(description = "Why this value, or how the operation is done, in words.") @Nullable
        String note,

        @Schema(description = "The place of its source in the list of sources, from 0.")
        Integer source) {}
