package wayside.clients;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wayside.clients.generated.ApiClient;
import wayside.clients.generated.ApiException;
import wayside.clients.generated.api.AboutApi;
import wayside.clients.generated.api.SizingApi;
import wayside.clients.generated.model.EnergyBudgetRequest;
import wayside.clients.generated.model.Load;
import wayside.clients.generated.model.Problem;
import wayside.clients.generated.model.RecommendationRequest;
import wayside.server.App;
import wayside.server.Settings;

/**
 * A client that OpenAPI Generator made of the open contract, unedited, reads and writes what the service does: nothing is
 * lost on the way there or back.
 */
class GeneratedClientTest {
    private static final Path EXAMPLES = Path.of("../../openapi/examples");
    private static App app;
    private static ApiClient client;

    @BeforeAll
    static void start() {
        app = App.create(Settings.defaults().onPort(0)).start();
        client = new ApiClient();
        client.updateBaseUri("http://localhost:" + app.port());
    }

    @AfterAll
    static void stop() {
        app.close();
    }

    @Test
    void carriesAnEnergyBudgetThereAndBack() throws Exception {
        JsonNode asked = example("energy-budget");
        EnergyBudgetRequest request = json().treeToValue(asked, EnergyBudgetRequest.class);
        assertSame(json().valueToTree(request), asked);
        assertSame(
                json().valueToTree(new SizingApi(client).energyBudget(request, null, null)),
                raw("energy-budget", asked));
    }

    @Test
    void carriesAWholeSystemThereAndBack() throws Exception {
        JsonNode asked = example("recommendation");
        RecommendationRequest request = json().treeToValue(asked, RecommendationRequest.class);
        assertSame(json().valueToTree(request), asked);
        assertSame(
                json().valueToTree(new SizingApi(client).recommendation(request, null, null)),
                raw("recommendation", asked));
    }

    @Test
    void readsAProblem() throws Exception {
        EnergyBudgetRequest request = new EnergyBudgetRequest()
                .addLoadsItem(new Load().name("fridge").powerW(45.0).hoursPerDay(25.0));
        ApiException refused =
                catchThrowableOfType(ApiException.class, () -> new SizingApi(client).energyBudget(request, null, null));
        Problem problem = json().readValue(refused.getResponseBody(), Problem.class);
        assertThat(problem.getStatus()).isEqualTo(422);
        assertThat(problem.getErrors()).hasSize(1);
        assertThat(problem.getErrors().get(0).getCode()).isEqualTo("out-of-range");
        assertThat(problem.getErrors().get(0).getMaximum()).isEqualTo(24.0);
    }

    @Test
    void findsWhatCanBeAsked() throws Exception {
        assertThat(new AboutApi(client).service().getOperations())
                .extracting(operation -> operation.getId())
                .contains("recommendation");
    }

    /** The generated client's own way with JSON. */
    private static ObjectMapper json() {
        return client.getObjectMapper();
    }

    /** Numbers by their value: 12 is 12.0. */
    private static void assertSame(JsonNode one, JsonNode other) {
        assertThat(one.equals(GeneratedClientTest::compare, other))
                .as("%s%nis not%n%s", one, other)
                .isTrue();
    }

    private static int compare(JsonNode one, JsonNode other) {
        boolean same = one.isNumber() && other.isNumber()
                ? Double.compare(one.doubleValue(), other.doubleValue()) == 0
                : one.equals(other);
        return same ? 0 : 1;
    }

    private static JsonNode raw(String operation, JsonNode asked) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + app.port() + "/v1/" + operation))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(asked.toString()))
                .build();
        return new ObjectMapper()
                .readTree(HttpClient.newHttpClient()
                        .send(request, BodyHandlers.ofString())
                        .body());
    }

    private static JsonNode example(String name) throws IOException {
        return new ObjectMapper().readTree(Files.readString(EXAMPLES.resolve(name + ".request.json")));
    }
}
