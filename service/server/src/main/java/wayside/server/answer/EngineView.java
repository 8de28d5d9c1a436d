package wayside.server.answer;

import io.swagger.v3.oas.annotations.media.Schema;

/** What made an answer. */
@Schema(name = "Engine", description = "What made an answer: of the same engine the same request has the same answer.")
public record EngineView(
        @Schema(description = "Which release.", example = "0.1.0")
        String version,

        @Schema(
                description =
                        "Which edition of all tables together; another one when a figure of any of them has changed."
                                + " /v1/reference names each with its document and its own edition.",
                example = "5f0c2d9e41b7")
        String tables) {}
