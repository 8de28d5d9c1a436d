package wayside.server;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.lessThan;

import io.restassured.config.JsonConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.path.json.config.JsonPathConfig.NumberReturnType;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;

/** The solar yield over HTTP. */
class SolarYieldTest {
    private static final RestAssuredConfig DOUBLES =
            RestAssuredConfig.config().jsonConfig(JsonConfig.jsonConfig().numberReturnType(NumberReturnType.DOUBLE));

    private static ValidatableResponse post(String body) {
        return RunningApp.json(body).config(DOUBLES).post("/v1/solar-yield").then();
    }

    @Test
    void twelveMonthsWithReasonsForAPlaceAlone() {
        post("{\"place\": {\"latitude\": 46.95, \"longitude\": 7.45}}")
                .statusCode(200)
                .body("months.month", contains(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12))
                .body("solarPowerW", equalTo(100.0))
                .body("months[5].yieldWhPerDay", greaterThan(300.0))
                .body("months[11].yieldWhPerDay", lessThan(90.0))
                .body("months[0].skyBasis", equalTo("world-climatology"))
                .body("derivation.figures", hasKey("/months/11/yieldRangeWhPerDay/low"))
                .body("assumptions.field", hasItems("/panel/tiltDegrees", "/solarPowerW", "/months/11/sky"));
    }

    // Source: Duffie & Beckman, example 1.10.1 gives 9.38 kWh/m2 above the atmosphere on 15 April at 43 N; a clearness
    // of a half in April brings half of it to the ground, a little more over the whole month's days.
    @Test
    void aGivenClearnessIsUsed() {
        post("{\"place\": {\"latitude\": 43, \"longitude\": 0}, \"months\": [{\"month\": 4,"
                        + " \"sky\": {\"clearnessIndex\": 0.5}, \"ambient\": {\"meanC\": 10}}]}")
                .statusCode(200)
                .body("months", hasSize(1))
                .body("months[0].horizontalKwhM2", greaterThan(4.6))
                .body("months[0].horizontalKwhM2", lessThan(4.8))
                .body("assumptions.field", org.hamcrest.Matchers.not(hasItem("/months/0/sky")));
    }

    @Test
    void polarNightIsAnAnswerAndNotAnError() {
        post("{\"place\": {\"latitude\": 78.2, \"longitude\": 15.6}, \"months\": [{\"month\": 12}]}")
                .statusCode(200)
                .body("months[0].yieldWhPerDay", equalTo(0.0))
                .body("months[0].daylightHours", equalTo(0.0))
                .body("cautions.code", hasItem("no-sun"));
    }

    @Test
    void stringsThatAColdMorningWouldDestroyAreTold() {
        post("{\"place\": {\"latitude\": 46.95, \"longitude\": 7.45}, \"months\": [{\"month\": 1}], \"strings\": {\"module\":"
                        + " {\"openCircuitV\": 41, \"workingV\": 34, \"shortCircuitA\": 11}, \"seriesCount\": 3,"
                        + " \"controllerMaximumVoltageV\": 100}}")
                .statusCode(200)
                .body("strings.fits", equalTo(false))
                .body("strings.method", equalTo("nec-690-7-a"))
                .body("strings.conductorCurrentA", equalTo(17.1875))
                .body("cautions[0].code", equalTo("string-over-voltage"))
                .body("cautions[0].severity", equalTo("danger"));
    }

    @Test
    void everyBadFieldIsToldAtOnce() {
        post("{\"place\": {\"latitude\": 95, \"longitude\": -181}, \"solarPowerW\": -1, \"busVoltageV\": 13, \"pannel\": {},"
                        + " \"months\": [{\"month\": 13}, {\"month\": 2, \"sky\": {}}], \"strings\": {\"seriesCount\": 0}}")
                .statusCode(422)
                .contentType("application/problem+json")
                .body(
                        "errors.pointer",
                        containsInAnyOrder(
                                "/place/latitude",
                                "/place/longitude",
                                "/solarPowerW",
                                "/busVoltageV",
                                "/pannel",
                                "/months/0/month",
                                "/months/1/sky",
                                "/strings/module",
                                "/strings/seriesCount"))
                .body("errors.find { it.pointer == '/pannel' }.nearest", equalTo("panel"));
    }

    @Test
    void thePolesTheDateLineAndTheEquatorAreAnswered() {
        for (String place :
                new String[] {"90, \"longitude\": 180", "-90, \"longitude\": -180", "0, \"longitude\": 0"}) {
            post("{\"place\": {\"latitude\": " + place + "}}").statusCode(200).body("months", hasSize(12));
        }
    }
}
