package wayside.server.operation.about;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import wayside.server.answer.EngineView;

/** What answers here. */
@Schema(description = "What answers here, and what it can be asked.")
public record ServiceView(
        EngineView engine,

        @Schema(description = "Where its contract is, for people and for validators.", example = "/openapi.json")
        String contract,

        @Schema(
                description =
                        "Where the same contract is for generators of clients: OpenAPI 3.0, open, without rules between"
                                + " fields.",
                example = "/openapi.generators.json")
        String contractForGenerators,

        @Schema(description = "Where it is explained.", example = "/docs/")
        String documentation,

        @Schema(description = "What it can be asked, in the order of the contract.")
        List<OperationView> operations) {}
