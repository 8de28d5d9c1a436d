package wayside.server.contract;

import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What an address answers when it refuses: a problem document for each status. */
final class Refusals {
    private static final String TYPE = "application/problem+json";
    private static final String LATER = "Retry-After";

    private static final Map<String, String> OF_ALL = Map.of(
            "406",
            "Accept rules out every type that the answer comes in.",
            "429",
            "You ask too much at once; Retry-After says when to come again.",
            "431",
            "The headers are too large.",
            "500",
            "The mistake is the service's own, and has been logged.",
            "503",
            "Too much at once; Retry-After says when to come again.");
    private static final Map<String, String> OF_A_BODY = Map.of(
            "400",
            "The body is not well-formed JSON: says line and column. Or the address has a query parameter other than"
                    + " explain, or no figure stands where one is to be explained.",
            "408",
            "The body did not come within the time set.",
            "413",
            "The body is too large; the detail says which limit it met.",
            "415",
            "The body is of a type, or in a content coding, that is not read here.",
            "422",
            "Fields that cannot be used: each with its JSON Pointer, what was received and what is accepted.");

    private Refusals() {}

    static void describe(ApiResponses responses, Endpoint endpoint) {
        Map<String, String> told = new TreeMap<>(OF_ALL);
        if (endpoint.request() == null) {
            told.put("400", "The address has a query parameter: none is taken.");
        } else {
            told.putAll(OF_A_BODY);
        }
        if (!endpoint.parameters().isEmpty()) {
            told.put("404", "There is nothing of that name.");
        }
        told.forEach((status, words) -> responses.addApiResponse(status, refusal(status, words)));
    }

    private static ApiResponse refusal(String status, String words) {
        ApiResponse refusal = new ApiResponse()
                .description(words)
                .content(new Content()
                        .addMediaType(
                                TYPE, new MediaType().schema(new Schema<>().$ref("#/components/schemas/Problem"))));
        if (status.equals("429") || status.equals("503")) {
            refusal.addHeaderObject(
                    LATER,
                    new Header()
                            .description("In how many seconds to come again.")
                            .schema(new JsonSchema().types(Set.of("integer")).minimum(BigDecimal.ONE)));
        }
        return refusal;
    }
}
