package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.path.json.JsonPath;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** No month is given more sunshine than falls above the atmosphere. */
class PossibleSkyTest {
    private static final String STAYS = """
            {'loads': [{'name': 'lamp', 'powerW': 10, 'hoursPerDay': 5}], %s
             'trip': {'stays': [{'place': {'latitude': 43, 'longitude': 5}, 'month': 4, 'nights': 2,
                                 'sky': {'dailyIrradiationKwhM2': 5}},
                                {'place': {'latitude': %s, 'longitude': 5}, 'month': %s, 'nights': 2,
                                 'sky': {'dailyIrradiationKwhM2': %s}}]}}
            """;
    private static final String SYSTEM =
            "'system': {'busVoltageV': 12, 'chemistry': 'lfp', 'nominalEnergyWh': 1000}, 'runs': 50,";

    private static JsonPath ask(String operation, String request, int status) {
        return RunningApp.json(request.replace('\'', '"'))
                .post("/v1/" + operation)
                .then()
                .statusCode(status)
                .extract()
                .jsonPath();
    }

    private static String stays(String operation, double latitude, int month, double kwhM2) {
        return STAYS.formatted(operation.equals("endurance") ? SYSTEM : "", latitude, month, kwhM2);
    }

    // Source: Duffie & Beckman, Solar Engineering of Thermal Processes, example 1.10.1: 33.8 MJ/m2, 9.38 kWh/m2, above
    // the
    // atmosphere at 43 degrees north on 15 April, the month's mean day by Klein 1977.
    @ParameterizedTest
    @ValueSource(strings = {"recommendation", "endurance"})
    void aStayIsRefusedMoreThanFallsAboveTheAtmosphere(String operation) {
        JsonPath problem = ask(operation, stays(operation, 43, 4, 9.6), 422);
        assertThat(problem.getList("errors")).hasSize(1);
        assertThat(problem.getString("errors[0].pointer")).isEqualTo("/trip/stays/1/sky/dailyIrradiationKwhM2");
        assertThat(problem.getString("errors[0].received")).isEqualTo("9.6");
        assertThat(problem.getString("errors[0].accepted")).matches("a number from 0 to 9\\.[34]\\d?");
        assertThat(problem.getString("errors[0].code")).isEqualTo("out-of-range");
        assertThat(problem.getDouble("errors[0].maximum")).isBetween(9.3, 9.5);
        ask(operation, stays(operation, 43, 4, 9.2), 200);
    }

    @ParameterizedTest
    @CsvSource({"80, 12", "-80, 6"})
    void polarNightHasNone(double latitude, int month) {
        JsonPath problem = ask("endurance", stays("endurance", latitude, month, 0.5), 422);
        assertThat(problem.getString("errors[0].accepted")).isEqualTo("0: the sun does not rise there in that month");
        ask("endurance", stays("endurance", latitude, month, 0), 200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "'solarPowerW': -5,"})
    void aYieldIsToldEveryImpossibleMonthBesideItsOtherFaults(String other) {
        JsonPath problem = ask("solar-yield", """
                {'place': {'latitude': 43, 'longitude': 5}, %s
                 'months': [{'month': 4, 'sky': {'dailyIrradiationKwhM2': 12}},
                            {'month': 7, 'sky': {'dailyIrradiationKwhM2': 6}},
                            {'month': 12, 'sky': {'dailyIrradiationKwhM2': 5}}]}
                """.formatted(other), 422);
        List<String> pointers = problem.getList("errors.pointer");
        assertThat(pointers)
                .contains("/months/0/sky/dailyIrradiationKwhM2", "/months/2/sky/dailyIrradiationKwhM2")
                .hasSize(other.isEmpty() ? 2 : 3);
        // Sources as above: at 43 degrees north about 9.4 kWh/m2 a day in April and 3.4 in December.
        assertThat(problem.getDouble("errors[0].maximum")).isBetween(9.3, 9.5);
        assertThat(problem.getDouble("errors[1].maximum")).isBetween(3.1, 3.6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.01", "5"})
    void aClearnessOfFiveIsRefused(String clearness) {
        JsonPath problem = ask("solar-yield", """
                {'place': {'latitude': 43, 'longitude': 5}, 'months': [{'month': 4, 'sky': {'clearnessIndex': %s}}]}
                """.formatted(clearness), 422);
        assertThat(problem.getString("errors[0].accepted")).isEqualTo("a number from 0.01 to 0.9");
    }

    @ParameterizedTest
    @ValueSource(strings = {"'latitude': 95, 'longitude': 5", "'longitude': 5"})
    void aPlaceThatIsItselfAtFaultIsToldAlone(String place) {
        JsonPath problem = ask("solar-yield", """
                {'place': {%s}, 'months': [{'month': 4, 'sky': {'dailyIrradiationKwhM2': 12}}]}
                """.formatted(place), 422);
        assertThat(problem.<String>getList("errors.pointer")).containsExactly("/place/latitude");
    }
}
