package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;

/** An input of a step. */
@Schema(name = "StepInput", description = "An input of a step.")
public record StepInputView(
        @Schema(description = "Its symbol in the formula.") String name,
        Double value,
        String unit,

        @Schema(description = "Id of the step that it came from.")
        String from) {}
