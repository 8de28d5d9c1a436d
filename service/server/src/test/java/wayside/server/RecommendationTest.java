package wayside.server;

import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.ValidatableResponse;
import java.nio.charset.StandardCharsets;
import org.hamcrest.Description;
import org.hamcrest.Matcher;
import org.hamcrest.TypeSafeMatcher;
import org.junit.jupiter.api.Test;

/** A whole system over HTTP. */
class RecommendationTest {
    /** What a customer at the counter really lists. */
    private static final String REAL_LIST = """
            {"loads": [
               {"name": "fridge", "powerW": 50, "hoursPerDay": 24, "surgeFactor": 2, "ambientDuty": [
                  {"ambientC": 20, "dutyCycle": 0.25}, {"ambientC": 25, "dutyCycle": 0.33},
                  {"ambientC": 32, "dutyCycle": 0.45}, {"ambientC": 40, "dutyCycle": 0.65}]},
               {"name": "fan", "powerW": 24, "quantity": 2, "hoursPerDay": 8},
               {"name": "LED lights", "powerW": 5, "quantity": 6, "hoursPerDay": 5},
               {"name": "phones", "powerW": 10, "quantity": 2, "hoursPerDay": 2},
               {"name": "laptop", "powerW": 60, "hoursPerDay": 4},
               {"name": "diesel heater", "powerW": 20, "hoursPerDay": 8, "surgeFactor": 5},
               {"name": "small induction hob", "supply": "ac", "powerW": 1800, "hoursPerDay": 0.4, "dutyCycle": 0.7}],
             "trip": {"stays": [{"place": {"latitude": 44, "longitude": 7}, "month": 7, "nights": 7,
                                 "drivingHoursPerDay": 1}]}%s}
            """;

    private static ValidatableResponse recommend(String body) {
        return RunningApp.json(body).post("/v1/recommendation").then();
    }

    @Test
    void anUpfitterWouldNodAtTheRealList() {
        recommend(REAL_LIST.formatted(""))
                .statusCode(200)
                .body("feasible", equalTo(true))
                .body("battery.chemistry", equalTo("lfp"))
                .body("battery.nominalEnergyWh", between(2500, 5200))
                .body("solar.powerW", between(400, 800))
                .body("inverter.continuousW", between(2000, 3000))
                .body("alternator.chargerPowerW", between(400, 800))
                .body("byChemistry.chemistry", containsInAnyOrder("lfp", "agm", "gel", "flooded", "nmc"))
                .body("circuits[0].name", equalTo("battery main"))
                .body("circuits[0].fuse.minimumInterruptA", between(10_000, 25_000))
                .body("circuits.conductor.awg", not(hasItem(nullValue())))
                .body("derivation.figures", hasKey("/battery/nominalEnergyWh"))
                .body("derivation.figures", hasKey("/circuits/0/fuse/ratingA"))
                .body("derivation.figures", hasKey("/energyBudget/dailyTotalWh"))
                .body("cautions.code", hasItems("cold-charging", "fuse-at-source", "mains", "alternator-heat"));
    }

    private static Matcher<Number> between(double low, double high) {
        return new TypeSafeMatcher<>() {
            @Override
            protected boolean matchesSafely(Number number) {
                return number.doubleValue() >= low && number.doubleValue() <= high;
            }

            @Override
            public void describeTo(Description description) {
                description.appendText("a number from " + low + " to " + high);
            }
        };
    }

    @Test
    void theSameRequestGivesTheSameBytes() {
        byte[] first = RunningApp.json(REAL_LIST.formatted(""))
                .post("/v1/recommendation")
                .asByteArray();
        RunningApp.json(REAL_LIST.formatted(""))
                .post("/v1/recommendation")
                .then()
                .body(equalTo(new String(first, StandardCharsets.UTF_8)));
    }

    @Test
    void whatIsGivenStaysAndWhatIsShortIsSaid() {
        recommend(REAL_LIST.formatted(", \"system\": {\"nominalEnergyWh\": 1280, \"solarPowerW\": 100}"))
                .statusCode(200)
                .body("feasible", equalTo(false))
                .body("shortfalls.code", hasItems("bank-too-small", "array-too-small"))
                .body("shortfalls[0].needed", notNullValue())
                .body("solar.powerW", between(100, 100))
                .body("battery.nominalEnergyWh", between(1280, 1280));
    }

    @Test
    void polarNightIsAnAnswerNotAnError() {
        recommend("""
                {"loads": [{"name": "light", "powerW": 10, "hoursPerDay": 5}],
                 "trip": {"stays": [{"place": {"latitude": 78, "longitude": 15}, "month": 12, "nights": 3}]}}
                """)
                .statusCode(200)
                .body("feasible", equalTo(false))
                .body("shortfalls.code", hasItem("no-sun"))
                .body("$", not(hasKey("solar")));
    }

    @Test
    void rulesAndLengthsAreHeeded() {
        recommend(
                        REAL_LIST.formatted(
                                ", \"system\": {\"rules\": \"nec\", \"circuitLengthsM\": {\"inverter\": 3}, \"busVoltageV\": 24}"))
                .statusCode(200)
                .body("circuits.rules", hasItem("nec"))
                .body("circuits.find { it.name == 'inverter' }.lengthM", between(3, 3))
                .body("battery.bankVoltageV", between(25.59, 25.61));
    }

    @Test
    void everyBadFieldIsNamedAtOnce() {
        RunningApp.json("""
                        {"loads": [{"name": "fridge", "powerW": -5, "hoursPerDay": 30}],
                         "trip": {"stays": [{"place": {"latitude": 95, "longitude": 7}, "month": 13, "nights": 1}]},
                         "system": {"busVoltageV": 36, "chemistri": "lfp"}}
                        """)
                .post("/v1/recommendation")
                .then()
                .statusCode(422)
                .contentType("application/problem+json")
                .body(
                        "errors.pointer",
                        hasItems(
                                "/loads/0/powerW",
                                "/loads/0/hoursPerDay",
                                "/trip/stays/0/place/latitude",
                                "/trip/stays/0/month",
                                "/system/busVoltageV",
                                "/system/chemistri"));
    }

    @Test
    void aTripIsAskedFor() {
        RunningApp.json("{\"loads\": [{\"name\": \"light\", \"powerW\": 10, \"hoursPerDay\": 5}]}")
                .post("/v1/recommendation")
                .then()
                .statusCode(422)
                .body("errors.pointer", hasItem("/trip"));
    }

    // Common practice, no source: a pack of 2 kWh on 700 W of sun and 400 W of mains at once is full from empty in
    // about two and a half hours, not the 1.8 h of plain division.
    @Test
    void aPackIsFullInAboutTwoAndAHalfHours() {
        RunningApp.json("""
                        {"system": {"busVoltageV": 12, "chemistry": "lfp", "nominalEnergyWh": 2000, "solarPowerW": 700, "shoreChargerW": 400}}
                        """)
                .post("/v1/recharge-time")
                .then()
                .statusCode(200)
                .body("feasible", equalTo(true))
                .body("hours", between(2.25, 2.75))
                .body("curve.size()", greaterThan(10))
                .body("sources.source", containsInAnyOrder("solar", "shore"))
                .body("derivation.figures", hasKey("/hours"));
    }

    @Test
    void aFrozenPackIsNotCharged() {
        RunningApp.json("""
                        {"system": {"busVoltageV": 12, "chemistry": "lfp", "nominalEnergyWh": 2000, "shoreChargerW": 400}, "ambientC": -5}
                        """)
                .post("/v1/recharge-time")
                .then()
                .statusCode(200)
                .body("feasible", equalTo(false))
                .body("shortfalls[0].code", equalTo("too-cold-to-charge"))
                .body("$", not(hasKey("hours")));
    }

    @Test
    void aRechargeThatFallsIsAFault() {
        RunningApp.json("""
                        {"system": {"busVoltageV": 12, "chemistry": "lfp", "nominalEnergyWh": 2000, "shoreChargerW": 400},
                         "fromStateOfCharge": 0.8, "toStateOfCharge": 0.2, "sources": ["wind"]}
                        """)
                .post("/v1/recharge-time")
                .then()
                .statusCode(422)
                .body("errors.pointer", hasItem("/sources/0"));
        RunningApp.json("""
                        {"system": {"busVoltageV": 12, "chemistry": "lfp", "nominalEnergyWh": 2000, "shoreChargerW": 400},
                         "fromStateOfCharge": 0.8, "toStateOfCharge": 0.2}
                        """)
                .post("/v1/recharge-time")
                .then()
                .statusCode(422)
                .body("errors.pointer", hasItem("/toStateOfCharge"));
    }
}
