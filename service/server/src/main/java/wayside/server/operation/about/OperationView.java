package wayside.server.operation.about;

import io.swagger.v3.oas.annotations.media.Schema;

/** Something that the service can be asked. */
@Schema(description = "Something that the service can be asked.")
public record OperationView(
        @Schema(description = "As in the contract.", example = "energy-budget")
        String id,

        @Schema(description = "Method of HTTP.", example = "POST")
        String method,

        @Schema(description = "Address, with its parameters in braces.", example = "/v1/energy-budget")
        String path,

        @Schema(description = "What it answers, in a few words.")
        String summary) {}
