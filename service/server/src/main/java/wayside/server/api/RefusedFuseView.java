package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;

/** A kind of fuse that must not be used. */
@Schema(name = "RefusedFuse", description = "A kind of fuse that must not be used in a circuit.")
public record RefusedFuseView(
        @Schema(description = "Kind of fuse.") String type,
        @Schema(description = "The check that it fails.") String reason) {}
