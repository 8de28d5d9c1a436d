package wayside.server.contract;

import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.HeaderParameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.Set;

/** What the contract says of the header {@code Prefer}. */
final class Preferences {
    private Preferences() {}

    static void describe(Operation operation, ApiResponse answer) {
        operation.addParametersItem(new HeaderParameter()
                .name("Prefer")
                .description("RFC 7240. With return=minimal the answer comes without derivation and steps, most of its"
                        + " size; assumptions and cautions stay. Any other preference is ignored.")
                .schema(text())
                .example("return=minimal"));
        answer.addHeaderObject(
                "Preference-Applied",
                new Header()
                        .description("return=minimal, when that was preferred.")
                        .schema(text()));
    }

    private static Schema<?> text() {
        return new JsonSchema().types(Set.of("string"));
    }
}
