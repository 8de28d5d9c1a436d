package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** What is asked, exactly. */
@Schema(name = "CurrentNeed", description = "What is asked, exactly.")
public record CurrentNeedView(
        @Schema(description = "Rated current that is needed [A].")
        Double currentA) {}
