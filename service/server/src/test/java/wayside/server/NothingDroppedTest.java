package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is asked and would do nothing is refused by its name. */
class NothingDroppedTest {
    private static final String TRIP = """
            "loads": [{"name": "fridge", "powerW": 45, "hoursPerDay": 24, "dutyCycle": 0.5}],
            "trip": {"stays": [{"place": {"latitude": 45, "longitude": 7}, "month": 4, "nights": 3%s}]}
            """;
    private static final String SYSTEM =
            ", \"system\": {\"busVoltageV\": 12, \"chemistry\": \"lfp\", \"nominalEnergyWh\": 1280}, \"runs\": 50";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'autonomyDays': 2, 'mustBalance': true         | mustBalance | true | nothing, or chanceOfRunningFlat beside it",
                "'comfortServedShare': 0.8                      | comfortServedShare | 0.8 | nothing, or chanceOfRunningFlat beside it",
                "'autonomyDays': 2, 'objective': 'mass'         | objective | \"mass\" | nothing, or chanceOfRunningFlat beside it",
                "'objective': 'volume'                          | objective | \"volume\" | nothing, or chanceOfRunningFlat beside it",
                "'chanceOfRunningFlat': 0.03, 'bankPricePerWh': 0.3 | bankPricePerWh | 0.3 | nothing, or objective price beside it",
                "'chanceOfRunningFlat': 0.03, 'objective': 'mass', 'arrayPricePerW': 0.3 | arrayPricePerW | 0.3 | nothing, or objective price beside it",
                "'chanceOfRunningFlat': 0.03, 'objective': 'price', 'bankPricePerWh': 0.3 | arrayPricePerW | nothing | a value beside objective price",
            })
    void ofATarget(String target, String field, String received, String accepted) {
        Response response = RunningApp.json(
                        "{" + TRIP.formatted("") + ", \"target\": {" + target.replace('\'', '"') + "}}")
                .post("/v1/recommendation");
        assertThat(response.statusCode()).isEqualTo(422);
        JsonPath problem = response.jsonPath();
        assertThat(problem.getList("errors")).hasSize(1);
        assertThat(problem.getString("errors[0].pointer")).isEqualTo("/target/" + field);
        assertThat(problem.getString("errors[0].received")).isEqualTo(received);
        assertThat(problem.getString("errors[0].accepted")).isEqualTo(accepted);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"runs\": 100",
                "\"seed\": 3",
                "\"skyUncertainty\": 0.1",
                "\"spreadUncertainty\": 0.2",
                "\"daySpread\": \"bendt\""
            })
    void ofTheDrawnWeatherByDays(String drawn) {
        RunningApp.json("{" + TRIP.formatted("") + ", \"target\": {\"autonomyDays\": 2}, " + drawn + "}")
                .post("/v1/recommendation")
                .then()
                .statusCode(422)
                .body(
                        "errors.accepted",
                        equalTo(java.util.List.of("nothing, or target/chanceOfRunningFlat beside it")));
        RunningApp.json("{" + TRIP.formatted("") + ", \"target\": {\"chanceOfRunningFlat\": 0.05}, " + drawn + "}")
                .post("/v1/recommendation")
                .then()
                .statusCode(200);
    }

    @Test
    void ofAPriceWithoutAnyBothAreAskedFor() {
        RunningApp.json("{" + TRIP.formatted("")
                        + ", \"target\": {\"chanceOfRunningFlat\": 0.03, \"objective\": \"price\"}}")
                .post("/v1/recommendation")
                .then()
                .statusCode(422)
                .body("errors.pointer", equalTo(java.util.List.of("/target/arrayPricePerW", "/target/bankPricePerWh")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"energy-budget", "circuits", "solar-yield", "recommendation", "recharge-time", "endurance"})
    void ofTheQueryOfAnOperation(String operation) {
        RunningApp.json("{}")
                .post("/v1/" + operation + "?derivation=false")
                .then()
                .statusCode(400)
                .contentType("application/problem+json")
                .body("type", equalTo("/problems/bad-request"))
                .body("detail", containsString("derivation=false"))
                .body("detail", containsString("Prefer: return=minimal"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/v1/reference?page=2", "/v1/reference/practice/appliances?x"})
    void ofTheQueryOfATable(String address) {
        RunningApp.request()
                .urlEncodingEnabled(false)
                .get(address)
                .then()
                .statusCode(400)
                .contentType("application/problem+json");
    }

    @Test
    void ofATypicalYearWithoutOne() {
        RunningApp.json("{" + TRIP.formatted("") + SYSTEM + ", \"yearReading\": \"means\"}")
                .post("/v1/endurance")
                .then()
                .statusCode(422)
                .body("errors[0].pointer", equalTo("/yearReading"))
                .body("errors[0].received", equalTo("\"means\""))
                .body("errors[0].accepted", equalTo("nothing, or a typical year in a form beside the request"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'runs': 60                                      |                       | 200",
                "'yearReading': 'means', 'daySpread': 'bendt'    |                       | 200",
                "'daySpread': 'bendt'                            | /daySpread            | 422",
                "'yearReading': 'hours', 'spreadUncertainty': 0.2 | /spreadUncertainty   | 422",
            })
    void ofDrawnDaysBesideTheHoursOfAYear(String fields, String pointer, int status) {
        String more = fields.startsWith("'runs'") ? "" : ", " + fields.replace('\'', '"');
        Response response = withYear("{" + TRIP.formatted("") + SYSTEM + more + "}");
        assertThat(response.statusCode()).as(response.asString()).isEqualTo(status);
        assertThat((String) response.path("errors[0].pointer")).isEqualTo(pointer);
    }

    @Test
    void ofASkyBesideAYear() {
        Response response = withYear("{" + TRIP.formatted(", \"sky\": {\"clearnessIndex\": 0.5}") + SYSTEM + "}");
        assertThat(response.statusCode()).isEqualTo(422);
        assertThat((String) response.path("errors[0].pointer")).isEqualTo("/trip/stays/0/sky");
        assertThat((String) response.path("errors[0].accepted"))
                .isEqualTo("nothing: the sun of the typical year stands for it");
    }

    private static Response withYear(String request) {
        return RunningApp.request()
                .multiPart("request", request, "application/json")
                .multiPart("typicalYear", "year.epw", InventedYear.bytes(), "application/octet-stream")
                .post("/v1/endurance");
    }
}
