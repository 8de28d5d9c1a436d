package wayside.server.contract;

import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.HeaderParameter;
import io.swagger.v3.oas.models.parameters.QueryParameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.math.BigDecimal;
import java.util.Set;

/** What the contract says of asking for more or less of an answer: the header {@code Prefer} and {@code explain}; and what it costs. */
final class Preferences {
    private Preferences() {}

    static void describe(Operation operation, ApiResponse answer, int mostPriceMs) {
        operation.addParametersItem(new HeaderParameter()
                .name("Prefer")
                .description("RFC 7240. With return=minimal the answer comes without its derivation, most of its size;"
                        + " assumptions and cautions stay. Any other preference is ignored.")
                .schema(text())
                .example("return=minimal"));
        operation.addParametersItem(new QueryParameter()
                .name("explain")
                .description(
                        "Which figures come with the way to them: all, none, or the JSON Pointer of a figure of the"
                                + " answer, or of an object or list whose figures are meant. All when left open, none with"
                                + " return=minimal.")
                .schema(text())
                .example("/dailyTotalWh"));
        answer.addHeaderObject(
                "Wayside-Price",
                new Header()
                        .description("How long the request was likely to take, in ms of a core, by its size alone: "
                                + mostPriceMs + " at most here. A service may be set to take less; a dearer request is"
                                + " then refused (422), and told its price and the bound.")
                        .schema(new JsonSchema().types(Set.of("integer")).maximum(BigDecimal.valueOf(mostPriceMs))));
        answer.addHeaderObject(
                "Preference-Applied",
                new Header()
                        .description("return=minimal, when that was preferred.")
                        .schema(text()));
    }

    /** An address that only gets says how long its answer may be kept. */
    static void describeCopies(ApiResponse answer) {
        answer.addHeaderObject(
                "ETag",
                new Header()
                        .description("Of just these bytes; for If-None-Match.")
                        .schema(text()));
        answer.addHeaderObject(
                "Cache-Control",
                new Header()
                        .description("How long a copy may be used unasked (RFC 9111).")
                        .schema(text()));
    }

    private static Schema<?> text() {
        return new JsonSchema().types(Set.of("string"));
    }
}
