package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.restassured.path.json.JsonPath;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where the battery stands, asked over HTTP. */
class BatteryPlaceTest {
    private static final String LASTS = """
            {'system': {'busVoltageV': 12, 'chemistry': 'lfp', 'nominalEnergyWh': 2560, 'solarPowerW': 400},
             'loads': [{'name': 'all', 'powerW': 12, 'hoursPerDay': 24}], 'runs': 500, %s
             'trip': {'stays': [{'place': {'latitude': 45, 'longitude': 5}, 'month': 1, 'nights': 5,
                                 'ambient': {'meanC': -4, 'dailySwingC': 6}}]}}
            """;
    private static final String RECOMMENDS = """
            {'loads': [{'name': 'all', 'powerW': 12, 'hoursPerDay': 24}], %s
             'trip': {'stays': [{'place': {'latitude': 45, 'longitude': 5}, 'month': 1, 'nights': 5,
                                 'drivingHoursPerDay': 2, 'ambient': {'meanC': -12, 'dailySwingC': 4}}]}}
            """;

    private static JsonPath ask(String operation, String request, String fields, int status) {
        return RunningApp.json(request.formatted(fields).replace('\'', '"'))
                .post("/v1/" + operation)
                .then()
                .statusCode(status)
                .extract()
                .jsonPath();
    }

    @Test
    void theColderThePlaceTheMoreHoursAreLost() {
        double outside = lost("");
        double underfloor = lost("'place': {'where': 'underfloor'},");
        double cabin = lost("'place': {'where': 'cabin'},");
        assertThat(outside).isGreaterThan(underfloor);
        assertThat(underfloor).isGreaterThan(cabin);
        assertThat(lost("'place': {'where': 'outside'},")).isEqualTo(outside);
        assertThat(lost("'place': {'heater': {'powerW': 40}},")).isZero();
    }

    private static double lost(String place) {
        return ask("endurance", LASTS, place, 200).getDouble("coldLockoutHours");
    }

    @Test
    void eachDefaultOfAPlaceIsNamedAndItsFieldOverridesIt() {
        assertThat(fields("")).contains("/place/where", "/place/warmerByK", "/place/lagHours");
        assertThat(fields("'place': {'where': 'cabin'},"))
                .contains("/place/warmerByK")
                .doesNotContain("/place/where");
        assertThat(fields("'place': {'where': 'cabin', 'warmerByK': 12, 'lagHours': 6},"))
                .noneMatch(field -> field != null && field.startsWith("/place"));
        assertThat(fields("'place': {'heater': {'powerW': 40}},"))
                .contains("/place/heater/onBelowC", "/place/heater/offAboveC", "/place/box");
        assertThat(fields("'place': {'heater': {'powerW': 40, 'onBelowC': 3, 'offAboveC': 8},"
                        + " 'box': {'massKg': 25, 'areaM2': 0.7}},"))
                .doesNotContain("/place/heater/onBelowC", "/place/heater/offAboveC", "/place/box", "/place/lagHours");
    }

    private static List<String> fields(String place) {
        return ask("endurance", LASTS, place, 200).getList("assumptions.field");
    }

    @Test
    void aHeaterIsOneOfTheUsesOfATrip() {
        JsonPath heated = ask("endurance", LASTS, "'place': {'heater': {'powerW': 40}},", 200);
        JsonPath cold = ask("endurance", LASTS, "", 200);
        assertThat(heated.getDouble("uses.heaterWh")).isPositive();
        assertThat(cold.getDouble("uses.heaterWh")).isZero();
        double sources = sum(heated, "sources");
        assertThat(sum(heated, "uses")).isCloseTo(sources, within(1e-6 * sources));
        assertThat(heated.getList("bankTemperature.p50C", Float.class).get(60)).isGreaterThanOrEqualTo(0f);
    }

    private static double sum(JsonPath answer, String object) {
        return answer.<String, Number>getMap(object).values().stream()
                .mapToDouble(Number::doubleValue)
                .sum();
    }

    // Worked by hand: 12 K below zero by the air, two standard deviations colder on a cold day.
    @Test
    void byDaysAHeaterIsALossOfTheDayAndLetsTheBankBeCharged() {
        JsonPath cold = ask("recommendation", RECOMMENDS, "", 200);
        assertThat(cold.getString("shortfalls[0].code")).isEqualTo("too-cold-to-charge");
        assertThat(cold.getString("shortfalls[0].text"))
                .contains("heated cabin, or on a heater of ")
                .contains(" Wh on a cold day");
        double powerW = cold.getDouble("shortfalls[0].parameters.power.number");
        double told = cold.getDouble("shortfalls[0].parameters.energy.number");
        JsonPath heated = ask("recommendation", RECOMMENDS, "'place': {'heater': {'powerW': " + powerW + "}},", 200);
        assertThat(heated.getBoolean("feasible")).isTrue();
        assertThat(heated.getDouble("energyBudget.losses.heaterWh")).isCloseTo(told, within(1e-9));
        assertThat(heated.getDouble("energyBudget.dailyTotalWh") - cold.getDouble("energyBudget.dailyTotalWh"))
                .isCloseTo(told, within(1e-9));
        assertThat(ask("recommendation", RECOMMENDS, "'place': {'where': 'cabin'},", 200)
                        .getBoolean("feasible"))
                .isTrue();
    }

    // By hand: 60 W of a 12 V bank that is down to four cells of 3 V are 5 A; for hours a fuse of 1.25 x 5 = 6.25 A.
    @Test
    void aHeaterHasItsOwnCableAndFuse() {
        JsonPath heated = ask("recommendation", RECOMMENDS, "'place': {'heater': {'powerW': 60}},", 200);
        JsonPath cold = ask("recommendation", RECOMMENDS, "", 200);
        String circuit = "circuits.find { it.name == 'battery heater' }.";
        assertThat(heated.getDouble(circuit + "currentA")).isCloseTo(5, within(1e-9));
        assertThat(heated.getDouble(circuit + "designCurrentA")).isCloseTo(6.25, within(1e-9));
        assertThat(heated.getDouble(circuit + "fuse.ratingA")).isGreaterThanOrEqualTo(6.25);
        assertThat(heated.getList("graph.cables.to")).contains("bank-heater");
        assertThat(cold.getList("circuits.name")).doesNotContain("battery heater");
    }

    // An air of -35 C leaves a cabin that is 15 K warmer in the frost all the same.
    @Test
    void aBankThatIsInTheCabinIsNotSentThere() {
        String place = "'place': {'where': 'cabin'},";
        JsonPath cold = ask("recommendation", RECOMMENDS.replace("-12", "-35"), place, 200);
        assertThat(cold.getString("shortfalls[0].code")).isEqualTo("too-cold-in-the-cabin");
        assertThat(cold.getString("shortfalls[0].text"))
                .startsWith("In the cabin too")
                .contains("a heater of ");
        double powerW = cold.getDouble("shortfalls[0].parameters.power.number");
        String heated = "'place': {'where': 'cabin', 'heater': {'powerW': " + powerW + "}},";
        assertThat(ask("recommendation", RECOMMENDS.replace("-12", "-35"), heated, 200)
                        .getList("shortfalls.code"))
                .doesNotContain("too-cold-in-the-cabin", "too-cold-to-charge");
    }

    // The recommended system on the same trip, asked again: both simulate the same bank, one worn and one new, in one
    // cold.
    @Test
    void aRecommendationByChanceTellsTheHoursLostToFrost() {
        String asked = """
                {'loads': [{'name': 'all', 'powerW': 12, 'hoursPerDay': 24}], 'target': {'chanceOfRunningFlat': 0.1},
                 'runs': 500, %s
                 'trip': {'stays': [{'place': {'latitude': 45, 'longitude': 5}, 'month': 1, 'nights': 4,
                                     'drivingHoursPerDay': 2, 'ambient': {'meanC': 2, 'dailySwingC': 6}}]}}
                """;
        double cold = ask("recommendation", asked, "'place': {'where': 'outside'},", 200)
                .getDouble("chanceOfRunningFlat.coldLockoutHours");
        assertThat(cold).isBetween(1.0, 24.0 * 4);
        assertThat(ask("recommendation", asked, "'place': {'where': 'cabin'},", 200)
                        .getDouble("chanceOfRunningFlat.coldLockoutHours"))
                .isLessThan(cold / 10);
    }

    @ParameterizedTest
    @CsvSource({
        "compartmentOffsetC, 15, /place/warmerByK",
        "bankLagHours, 8, /place/lagHours",
        "bankBox, '{''massKg'': 30}', /place/box"
    })
    void anEarlierNameIsRefusedWithTheNewOne(String name, String value, String now) {
        for (String operation : List.of("endurance", "recommendation")) {
            JsonPath problem = ask(
                    operation,
                    operation.equals("endurance") ? LASTS : RECOMMENDS,
                    "'" + name + "': " + value + ",",
                    422);
            assertThat(problem.getList("errors")).hasSize(1);
            assertThat(problem.getString("errors[0].pointer")).isEqualTo("/" + name);
            assertThat(problem.getString("errors[0].detail"))
                    .isEqualTo("This field is not known here; it is " + now + " now, in the same unit.");
        }
    }

    @Test
    void everyFaultOfAPlaceIsToldAtOnce() {
        JsonPath problem = ask(
                "endurance",
                LASTS,
                "'place': {'where': 'attic', 'warmerByK': 90, 'lagHours': 0,"
                        + " 'heater': {'powerW': 0, 'onBelowC': 9, 'offAboveC': 4}},",
                422);
        assertThat(problem.<String>getList("errors.pointer"))
                .containsExactlyInAnyOrder(
                        "/place/where",
                        "/place/warmerByK",
                        "/place/lagHours",
                        "/place/heater/powerW",
                        "/place/heater/offAboveC");
    }

    @ParameterizedTest
    @ValueSource(strings = {"warmerByC", "warmerByF"})
    void aDifferenceIsInKelvin(String name) {
        JsonPath problem = ask("endurance", LASTS, "'place': {'" + name + "': 10},", 422);
        assertThat(problem.getString("errors[0].detail")).contains("warmerByK");
    }
}
