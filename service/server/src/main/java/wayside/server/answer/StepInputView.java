package wayside.server.answer;

import io.swagger.v3.oas.annotations.media.Schema;

/** An input of a step. */
@Schema(name = "StepInput", description = "An input of a step. Inputs that share a symbol are a list, in order.")
public record StepInputView(
        @Schema(description = "Its symbol in the expression.")
        String symbol,

        @Schema(description = "Id of the step whose value it is.")
        String step) {}
