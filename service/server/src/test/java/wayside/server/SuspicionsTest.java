package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every operation that takes loads says the same of them, and where. The loads and figures are invented. */
class SuspicionsTest {
    private static final String LOADS = """
            "loads": [
              {"name": "Fridge", "powerW": 60, "hoursPerDay": 24},
              {"name": "Microwave", "supply": "ac", "powerW": 800, "hoursPerDay": 0.2},
              {"name": "CPAP", "powerW": 30, "hoursPerDay": 8},
              {"name": "Battery", "powerW": 10000, "hoursPerDay": 0.1},
              {"name": "Fridge in the tent", "powerW": 50, "hoursPerDay": 24},
              {"name": "Grinder", "supply": "ac", "powerW": 2500, "hoursPerDay": 0.1}]
            """;
    private static final String TRIP = """
            "trip": {"stays": [{"place": {"latitude": 42, "longitude": 5}, "month": 6, "nights": 3}]}
            """;
    private static final String BUILT = """
            "system": {"busVoltageV": 12, "chemistry": "lfp", "nominalEnergyWh": 5000, "solarPowerW": 600,
              "inverter": {"continuousW": 1000}}
            """;

    @ParameterizedTest
    @CsvSource({"/v1/energy-budget, ''", "/v1/recommendation, /system", "/v1/endurance, /system"})
    void saysTheSameOfTheLoadsInEveryAnswer(String operation, String system) {
        String body = operation.endsWith("budget")
                ? "{" + LOADS + ", \"inverter\": {\"continuousW\": 1000}}"
                : "{" + LOADS + "," + TRIP + "," + BUILT + "}";
        Response response = RunningApp.json(body).post(operation);
        assertThat(response.statusCode()).isEqualTo(200);
        List<Map<String, Object>> cautions = response.path("cautions");
        assertThat(cautions.stream()
                        .filter(caution -> caution.containsKey("field"))
                        .filter(caution -> !"inverter-idle".equals(caution.get("code")))
                        .map(caution -> caution.get("code") + " " + caution.get("field")))
                .contains(
                        "must-not-fail /loads/2",
                        "label-around-the-clock /loads/0/dutyCycle",
                        "cooking-watts /loads/1/powerW",
                        "units-mixed-up /loads/3/powerW",
                        "label-around-the-clock /loads/4/dutyCycle",
                        "inverter-too-small /loads/5/powerW",
                        "not-all-at-once " + system + "/inverter/continuousW");
    }

    @ParameterizedTest
    @CsvSource({"/v1/recommendation, local-code", "/v1/endurance, not-a-forecast"})
    void aCautionAboutTheWholeHasNoField(String operation, String code) {
        Response response =
                RunningApp.json("{" + LOADS + "," + TRIP + "," + BUILT + "}").post(operation);
        List<Map<String, Object>> cautions = response.path("cautions");
        assertThat(cautions)
                .filteredOn(caution -> code.equals(caution.get("code")))
                .isNotEmpty()
                .allSatisfy(caution -> assertThat(caution).doesNotContainKey("field"));
    }
}
