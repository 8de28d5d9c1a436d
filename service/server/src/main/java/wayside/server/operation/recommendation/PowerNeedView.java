package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** What is asked, exactly. */
@Schema(name = "PowerNeed", description = "What is asked, exactly.")
public record PowerNeedView(
        @Schema(description = "Rated power that is needed [W].")
        Double powerW) {}
