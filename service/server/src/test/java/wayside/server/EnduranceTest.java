package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.lessThanOrEqualTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Chances over HTTP: of a system that stands, and of one that is sized by them. */
class EnduranceTest {
    private static final String TRIP = """
            "loads": [{"name": "fridge", "powerW": 45, "hoursPerDay": 24, "dutyCycle": 0.5},
                      {"name": "laptop", "powerW": 60, "hoursPerDay": 3, "tier": "comfort"}],
            "trip": {"stays": [{"place": {"latitude": 45, "longitude": 7}, "month": 4, "nights": %d,
                                "sky": {"clearnessIndex": 0.45}, "ambient": {"meanC": %d, "dailySwingC": 8}}]}
            """;

    private static ValidatableResponse ask(String system, int nights, int meanC, String more) {
        return RunningApp.json("{\"system\": " + system + ", " + TRIP.formatted(nights, meanC) + more + "}")
                .post("/v1/endurance")
                .then();
    }

    @Test
    void tellsTheChanceTheBandsAndTheBooks() {
        ValidatableResponse answer = ask(
                "{\"busVoltageV\": 12, \"chemistry\": \"lfp\", \"nominalEnergyWh\": 1280, \"solarPowerW\": 150}",
                7,
                15,
                ", \"runs\": 200");
        answer.statusCode(200)
                .body("runs", equalTo(200))
                .body("seed", equalTo(0))
                .body("chanceOfRunningFlat.high", greaterThan(0f))
                .body("stateOfCharge.hours", hasSize(168))
                .body("stateOfCharge.p95", everyItem(lessThanOrEqualTo(1f)))
                .body("whatHelps.code", hasItem("more-panel"))
                .body("worstRun.text", containsString("200 trips"))
                .body("derivation.figures", hasKey("/chanceOfRunningFlat/value"))
                .body("assumptions.field", hasItem("/skyUncertainty"));
        double sources = sum(answer, "sources.solarWh", "sources.alternatorWh", "sources.shoreWh");
        double uses = sum(
                answer,
                "uses.loadsWh",
                "uses.inverterLossWh",
                "uses.standbyWh",
                "uses.storageLossWh",
                "uses.storeGainWh");
        assertThat(uses).isCloseTo(sources, within(1e-3 * sources));
    }

    private static double sum(ValidatableResponse answer, String... paths) {
        return List.of(paths).stream()
                .mapToDouble(path -> answer.extract().jsonPath().getDouble(path))
                .sum();
    }

    @Test
    void theSameSeedGivesTheSameBytes() {
        String system =
                "{\"busVoltageV\": 12, \"chemistry\": \"lfp\", \"nominalEnergyWh\": 1280, \"solarPowerW\": 150}";
        String first =
                ask(system, 3, 15, ", \"runs\": 100, \"seed\": 5").extract().asString();
        String second =
                ask(system, 3, 15, ", \"runs\": 100, \"seed\": 5").extract().asString();
        assertThat(second).isEqualTo(first);
    }

    // Common practice, no source: a lithium battery isn't charged below 0 C.
    @Test
    void frostIsTold() {
        ask(
                        "{\"busVoltageV\": 12, \"chemistry\": \"lfp\", \"nominalEnergyWh\": 1280, \"solarPowerW\": 300}",
                        4,
                        -8,
                        ", \"runs\": 100")
                .statusCode(200)
                .body("coldLockoutHours", greaterThan(0f))
                .body("cautions.code", hasItem("cold-charging"));
    }

    @Test
    void tooManyHoursAreRefusedWithTheRunsThatGo() {
        ask("{\"busVoltageV\": 12, \"chemistry\": \"lfp\", \"nominalEnergyWh\": 1280}", 366, 15, ", \"runs\": 20000")
                .statusCode(422)
                .body("errors[0].pointer", equalTo("/runs"))
                .body("errors[0].accepted", containsString("at most 2276 for a trip of 366 nights"));
    }

    private static ValidatableResponse recommend(String targetAndMore) {
        return RunningApp.json("{" + TRIP.formatted(7, 15) + ", \"target\": " + targetAndMore + "}")
                .post("/v1/recommendation")
                .then();
    }

    @Test
    void aSystemIsSizedByTheChanceThatIsAccepted() {
        recommend("{\"chanceOfRunningFlat\": 0.05}, \"runs\": 300")
                .statusCode(200)
                .body("feasible", equalTo(true))
                .body("chanceOfRunningFlat.value", lessThanOrEqualTo(0.05f))
                .body("chanceOfRunningFlat.runs", equalTo(300))
                .body("curve.size()", greaterThan(3))
                .body("objective", equalTo("mass"))
                .body("ruleOfThumb.chanceOfRunningFlat", notNullValue())
                .body("whatHelps.code", hasItem("more-battery"))
                .body("advice.text", containsString("you run flat on"))
                .body("derivation.figures", hasKey("/chanceOfRunningFlat/value"));
    }

    @Test
    void thePricesAreTheCustomersOwn() {
        recommend("{\"chanceOfRunningFlat\": 0.05, \"objective\": \"price\","
                        + " \"bankPricePerWh\": 0.3, \"arrayPricePerW\": 0.8}, \"runs\": 300")
                .statusCode(200)
                .body("objective", equalTo("price"))
                .body("curve.price", everyItem(greaterThan(0f)));
    }

    @Test
    void withoutAnAcceptedChanceNoneIsTold() {
        recommend("{\"autonomyDays\": 2}")
                .statusCode(200)
                .body("chanceOfRunningFlat", nullValue())
                .body("curve", nullValue())
                .body("ruleOfThumb", not(hasKey("chanceOfRunningFlat")));
    }

    // Worked by hand: 30 kg in 0.8 m2 of 12 mm plywood lag by about 5.5 hours.
    @Test
    void takesTheLagOfTheBankOrItsBox() {
        String asked = """
                {"system": {"busVoltageV": 12, "chemistry": "lfp", "nominalEnergyWh": 1000, "solarPowerW": 200},
                 "loads": [{"name": "all", "powerW": 12, "hoursPerDay": 24}], %s
                 "trip": {"stays": [{"place": {"latitude": 45, "longitude": 5}, "month": 1, "nights": 3}]}}
                """;
        RunningApp.json(asked.formatted("\"place\": {\"box\": {\"massKg\": 30, \"areaM2\": 0.8}},"))
                .post("/v1/endurance")
                .then()
                .statusCode(200)
                .body("coldLockoutHours", greaterThan(0f))
                .body("assumptions.field", hasItem("/place/box/plywoodM"))
                .body("assumptions.field", not(hasItem("/place/lagHours")));
        RunningApp.json(asked.formatted("\"place\": {\"lagHours\": 0, \"box\": {\"massKg\": 30, \"areaM2\": 0.8}},"))
                .post("/v1/endurance")
                .then()
                .statusCode(422)
                .body("errors.pointer", hasItem("/place/box"));
    }
}
