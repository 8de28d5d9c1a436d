package wayside.server.answer;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Map;

/** How figures of an answer came about. */
@Schema(
        name = "Derivation",
        description = "The way to the figures of an answer, down to what was given and the sources.")
public record DerivationView(
        @Schema(description = "The id of the step of each figure, by the JSON Pointer of the figure in this answer.")
        Map<String, String> figures,

        @Schema(description = "Each stands after the steps that it uses.")
        List<StepView> steps,

        @Schema(description = "Each document once; a step names it by its place here, from 0.")
        List<SourceView> sources) {}
