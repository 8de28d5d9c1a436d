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
    private static final String PROBLEM = "application/problem+json";
    private static final String NOT_ACCEPTABLE = "Accept rules the type of the answer out.";
    private static final String NOT_MODIFIED = "If-None-Match names the ETag of the answer: it has not changed.";
    private static final Map<String, String> FAULTS_OF_A_BODY = Map.of(
            "400",
            "The body is not well-formed JSON: says line and column. Or the address has a query parameter other than"
                    + " explain, or no figure stands where one is to be explained.",
            "406",
            NOT_ACCEPTABLE,
            "408",
            "The body did not come within the time set.",
            "413",
            "The body is too large; the detail says which limit it met.",
            "415",
            "The body is of a type, or in a content coding, that is not read here.",
            "422",
            "Fields that cannot be used: each with its JSON Pointer, what was received and what is accepted.",
            "429",
            "You ask too much at once; Retry-After says when to come again.",
            "503",
            "Too much at once; Retry-After says when to come again.");

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
        ApiResponses responses = new ApiResponses().addApiResponse("200", answer);
        if (request != null) {
            operation.requestBody(body(endpoint, schemas.add(request, true)));
            Preferences.describe(operation, answer, endpoint.mostPriceMs());
            FAULTS_OF_A_BODY.entrySet().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .forEach(fault -> responses.addApiResponse(fault.getKey(), problem(fault.getValue())));
        } else {
            responses
                    .addApiResponse("304", new ApiResponse().description(NOT_MODIFIED))
                    .addApiResponse("400", problem("The address has a query parameter: none is taken."))
                    .addApiResponse("406", problem(NOT_ACCEPTABLE));
        }
        if (!endpoint.parameters().isEmpty()) {
            responses.addApiResponse("404", problem("There is nothing of that name."));
        }
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

    private static ApiResponse problem(String description) {
        return answer(description, PROBLEM, new Schema<>().$ref("#/components/schemas/Problem"));
    }

    private static ApiResponse answer(String description, String type, Schema<?> schema) {
        return new ApiResponse()
                .description(description)
                .content(new Content().addMediaType(type, new MediaType().schema(schema)));
    }
}
