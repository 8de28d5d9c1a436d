package wayside.server.contract;

import com.fasterxml.jackson.databind.JsonNode;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.Paths;
import io.swagger.v3.oas.models.SpecVersion;
import io.swagger.v3.oas.models.examples.Example;
import io.swagger.v3.oas.models.info.Contact;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.info.License;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.PathParameter;
import io.swagger.v3.oas.models.parameters.RequestBody;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import io.swagger.v3.oas.models.servers.Server;
import io.swagger.v3.oas.models.tags.Tag;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wayside.server.problem.Problem;

/** The OpenAPI 3.1 document, made of the endpoints and their records. */
public final class Contract {
    private static final String SIZING = "sizing";
    private static final String ABOUT = "about";
    private static final String NOT_MODIFIED = "If-None-Match names the ETag of the answer: it has not changed.";

    private final ContractSchemas schemas = new ContractSchemas();
    private final Map<String, Map<String, JsonNode>> examples;

    private Contract(Map<String, Map<String, JsonNode>> examples) {
        this.examples = examples;
    }

    /**
     * The document.
     *
     * @param examples of requests, each with its file's name, by id of the operation
     */
    public static OpenAPI of(List<Endpoint> endpoints, Map<String, Map<String, JsonNode>> examples) {
        return new Contract(examples).document(endpoints);
    }

    private OpenAPI document(List<Endpoint> endpoints) {
        schemas.add(Problem.class, false);
        ProblemWords.describe(schemas.all());
        Paths paths = new Paths();
        for (Endpoint endpoint : endpoints) {
            PathItem item = paths.computeIfAbsent(endpoint.path(), path -> new PathItem());
            item.operation(PathItem.HttpMethod.valueOf(endpoint.method()), operation(endpoint));
        }
        return new OpenAPI(SpecVersion.V31)
                .openapi("3.1.0")
                .info(new Info()
                        .title("Wayside")
                        .version("1")
                        .description(
                                "Sizes the electrical system of a camper or an overland truck from the list of what it"
                                        + " has to run. Figures are in SI units, named in each field; shares are 0 to 1; azimuth is"
                                        + " clockwise from north. Every answer that holds a figure holds the steps that led to it."
                                        + " Every operation is safe and idempotent: it changes nothing and may be sent"
                                        + " again (RFC 9110, 9.2). Of one engine, which each answer names, the same request"
                                        + " has the same answer to the byte, so you may keep it as long as the engine is"
                                        + " the same."
                                        + " Wayside sizes and explains; it never says that an installation complies with a code.")
                        .contact(new Contact().name("The authors of Wayside"))
                        .license(new License().name("Apache-2.0").identifier("Apache-2.0")))
                .tags(List.of(
                        new Tag().name(SIZING).description("Sizes or judges a system, whole or in part."),
                        new Tag().name(ABOUT).description("What the service is, and what its figures rest on.")))
                .servers(List.of(new Server().url("/").description("The service that this document came from")))
                .paths(paths)
                .components(new Components().schemas(schemas.all()));
    }

    private Operation operation(Endpoint endpoint) {
        Operation operation = new Operation()
                .operationId(endpoint.id())
                .addTagsItem(endpoint.request() == null ? ABOUT : SIZING)
                .summary(endpoint.summary())
                .description(endpoint.description());
        for (String name : endpoint.parameters()) {
            Schema<?> text = new JsonSchema().types(Set.of("string"));
            operation.addParametersItem(
                    new PathParameter().name(name).schema(text).required(true));
        }
        Class<?> request = endpoint.request();
        ApiResponse answer = answer("The answer.", "application/json", schemas.add(endpoint.response(), false));
        String table = endpoint.table();
        if (table != null) {
            answer.getContent().addMediaType("text/csv", table(table));
        }
        ApiResponses responses = new ApiResponses().addApiResponse("200", answer);
        if (request != null) {
            operation.requestBody(body(endpoint, schemas.add(request, true)));
            Preferences.describe(operation, answer, endpoint.mostPriceMs());
        } else {
            Preferences.describeCopies(answer);
            responses.addApiResponse("304", new ApiResponse().description(NOT_MODIFIED));
        }
        Refusals.describe(responses, endpoint);
        return operation.responses(responses);
    }

    private RequestBody body(Endpoint endpoint, Schema<?> schema) {
        MediaType json = new MediaType().schema(schema);
        examples.getOrDefault(endpoint.id(), Map.of())
                .forEach((name, example) -> json.addExamples(name, new Example().value(example)));
        Content content = new Content().addMediaType("application/json", json);
        Class<?> form = endpoint.form();
        if (form != null) {
            content.addMediaType("multipart/form-data", new MediaType().schema(form(schemas.add(form, true))));
        }
        return new RequestBody().required(true).content(content);
    }

    private static Schema<?> form(Schema<?> request) {
        Schema<?> year = new JsonSchema()
                .types(Set.of("string"))
                .contentMediaType("application/octet-stream")
                .description(
                        "A typical year in the open EPW format, at most 3 MiB: 8 header lines, then the 8760 hours of"
                                + " a year in order. Place and weather are taken from it.");
        Schema<?> form = new JsonSchema().types(Set.of("object"));
        form.setRequired(List.of("typicalYear"));
        form.setAdditionalProperties(false);
        form.addProperty("request", request);
        form.addProperty("typicalYear", year);
        return form;
    }

    private static MediaType table(String holds) {
        Schema<?> text = new JsonSchema()
                .types(Set.of("string"))
                .description(
                        "A table (RFC 4180) of one list of the answer, with a head that names the columns as the fields"
                                + " are named, and without assumptions, cautions and derivation. " + holds);
        return new MediaType().schema(text);
    }

    private static ApiResponse answer(String description, String type, Schema<?> schema) {
        return new ApiResponse()
                .description(description)
                .content(new Content().addMediaType(type, new MediaType().schema(schema)));
    }
}
