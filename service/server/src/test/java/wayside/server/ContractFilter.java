package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.filter.Filter;
import io.restassured.filter.FilterContext;
import io.restassured.response.Response;
import io.restassured.specification.FilterableRequestSpecification;
import io.restassured.specification.FilterableResponseSpecification;
import java.net.URI;
import java.util.Iterator;
import java.util.Locale;
import java.util.Map;

/** Holds every exchange with an address of the contract against the contract. */
final class ContractFilter implements Filter {
    private static final String PROBLEM = "application/problem+json";

    @Override
    public Response filter(
            FilterableRequestSpecification request, FilterableResponseSpecification spec, FilterContext context) {
        Response response = context.next(request, spec);
        String path = URI.create(request.getURI()).getRawPath();
        JsonNode operation = operation(path, request.getMethod());
        if (!operation.isMissingNode()) {
            check(operation.get("responses"), response);
        } else if (PROBLEM.equals(response.contentType())) {
            accepts(ContractSchema.DOCUMENT.at("/components/schemas/Problem"), response);
        }
        return response;
    }

    private static void check(JsonNode responses, Response response) {
        JsonNode described = responses.get(Integer.toString(response.statusCode()));
        assertThat(described)
                .as("the contract knows status %s: %s", response.statusCode(), response.asString())
                .isNotNull();
        JsonNode type = described.at("/content").get(response.contentType());
        assertThat(type)
                .as("the contract knows the type %s of status %s", response.contentType(), response.statusCode())
                .isNotNull();
        if (response.contentType().endsWith("json")) {
            accepts(type.get("schema"), response);
        }
    }

    private static void accepts(JsonNode schema, Response response) {
        assertThat(ContractSchema.faults(schema, response.asString()))
                .as("the contract's schema accepts the answer")
                .isEmpty();
    }

    private static JsonNode operation(String path, String method) {
        Iterator<Map.Entry<String, JsonNode>> paths =
                ContractSchema.DOCUMENT.get("paths").properties().iterator();
        while (paths.hasNext()) {
            Map.Entry<String, JsonNode> entry = paths.next();
            if (path.matches(entry.getKey().replaceAll("\\{[a-z]+}", "[^/]+"))) {
                return entry.getValue().path(method.toLowerCase(Locale.ROOT));
            }
        }
        return ContractSchema.DOCUMENT.path("nothing");
    }
}
