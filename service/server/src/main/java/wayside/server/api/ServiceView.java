package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;

/** What answers here. */
@Schema(description = "What answers here.")
public record ServiceView(
        @Schema(description = "Which engine runs: the same engine gives the same figures.")
        String version,

        @Schema(description = "Where its contract is.") String contract) {}
