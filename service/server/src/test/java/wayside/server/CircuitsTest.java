package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.config.JsonConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.path.json.config.JsonPathConfig.NumberReturnType;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Circuits over HTTP: what an upfitter asks, and what they get. */
class CircuitsTest {
    private static final RestAssuredConfig DOUBLES =
            RestAssuredConfig.config().jsonConfig(JsonConfig.jsonConfig().numberReturnType(NumberReturnType.DOUBLE));

    // Source: ABYC E-11 worked example in a reprint: 10 A, 21 ft out and back, 12 V, 3 %: printed answer 10 AWG.
    @Test
    void agreesWithThePublishedWorkedExampleOverHttp() {
        circuits("""
                {"name": "example", "currentA": 10, "continuous": false, "lengthM": 3.2004,
                 "voltageV": 12, "voltageDropLimitPercent": 3}
                """)
                .body("circuits[0].feasible", equalTo(true))
                .body("circuits[0].conductor.awg", equalTo("10"))
                .body("circuits[0].rules", equalTo("abyc-e11"))
                .body("circuits[0].governedBy", equalTo("voltage-drop"))
                .body("circuits[0].roundTripM", closeTo(6.4008, 1e-9))
                .body("circuits[0].parallelConductors", nullValue())
                .body("circuits[0].shortfall", nullValue())
                .body("derivation.figures", hasKey("/circuits/0/conductor/ampacityA"))
                .body("derivation.figures", hasKey("/circuits/0/voltageDropPercent"));
    }

    @Test
    void saysWhatItTookForGranted() {
        circuits("""
                {"name": "fridge", "currentA": 5, "lengthM": 4}
                """)
                .body("circuits[0].designCurrentA", closeTo(6.25, 1e-9))
                .body("circuits[0].fuse.ratingA", closeTo(7.5, 1e-9))
                .body("circuits[0].ambientC", closeTo(30, 1e-9))
                .body("circuits[0].insulationC", closeTo(105, 1e-9))
                .body("circuits[0].bundledConductors", equalTo(2))
                .body(
                        "assumptions.field",
                        hasItems("/circuits/0/continuous", "/circuits/0/insulationC", "/circuits/0/bank"))
                .body("cautions.code", hasItems("fuse-at-source", "local-code"));
    }

    // Common practice, no source: the main fuse of a lithium bank must break 20 kA.
    @Test
    void asksForAHighBreakingCapacityAtALithiumBank() {
        circuits("""
                {"name": "inverter", "powerW": 2222, "lengthM": 1.2, "bank": {"chemistry": "lfp", "capacityAh": 200}}
                """)
                .body("circuits[0].fuse.minimumInterruptA", closeTo(20000, 1e-9))
                .body("circuits[0].fuse.type", equalTo("class T"))
                .body("circuits[0].fuse.refused.type", hasItems("blade 32 V", "strip"));
    }

    // Source: ISO 8820-5:2015 and 8820-6:2019, scopes: strips are rated 32 V, single-bolt links 58 V; 24 cells at 2.42
    // V are 58.1 V.
    @Test
    void neverPutsAFiftyEightVoltFuseOnFortyEightVolts() {
        circuits("""
                {"name": "inverter", "currentA": 100, "lengthM": 2, "voltageV": 48}
                """)
                .body("circuits[0].fuse.type", equalTo("strip 70 V"))
                .body("circuits[0].fuse.refused.type", hasItems("strip", "single-bolt"))
                .body("cautions.code", hasItem("direct-current-arc"));
    }

    @Test
    void answersTheSameCableByBothRuleSets() {
        circuits("""
                {"name": "a", "currentA": 40, "lengthM": 1, "rules": "abyc-e11"},
                {"name": "b", "currentA": 40, "lengthM": 1, "rules": "nec"}
                """)
                .body("circuits.rules", equalTo(List.of("abyc-e11", "nec")))
                .body("circuits[0].conductor.awg", equalTo("10"))
                .body("circuits[1].conductor.awg", equalTo("8"));
    }

    @Test
    void reportsAnImpossibleCircuitAsAnAnswer() {
        circuits("""
                {"name": "winch", "currentA": 500, "lengthM": 20}, {"name": "lamp", "currentA": 1, "lengthM": 3}
                """)
                .body("circuits[0].feasible", equalTo(false))
                .body("circuits[0].conductor", nullValue())
                .body("circuits[0].shortfall.code", equalTo("no-fuse-rating"))
                .body("circuits[0].shortfall.unit", equalTo("A"))
                .body("circuits[1].feasible", equalTo(true));
    }

    @Test
    void namesEveryBadFieldAtOnce() {
        refused("""
                {"name": "x", "currentA": -1, "lengthM": 0, "voltageV": 1e308, "bundledConductors": 0,
                 "insulationC": 20, "voltageDropLimitPercent": 0, "rules": "nek", "colour": "red"}
                """)
                .body(
                        "errors.pointer",
                        hasItems(
                                "/circuits/0/currentA",
                                "/circuits/0/lengthM",
                                "/circuits/0/voltageV",
                                "/circuits/0/bundledConductors",
                                "/circuits/0/insulationC",
                                "/circuits/0/voltageDropLimitPercent",
                                "/circuits/0/rules",
                                "/circuits/0/colour"));
    }

    @Test
    void namesTheNearestRuleSet() {
        refused("""
                {"name": "x", "currentA": 1, "lengthM": 1, "rules": "abyc-e12"}
                """)
                .body("errors[0].pointer", equalTo("/circuits/0/rules"))
                .body("errors[0].received", containsString("abyc-e12"))
                .body("errors[0].accepted", containsString("abyc-e11"))
                .body("errors[0].nearest", equalTo("abyc-e11"));
    }

    @Test
    void refusesCurrentAndPowerAtOnceAndNeither() {
        refused("""
                {"name": "x", "currentA": 1, "powerW": 12, "lengthM": 1}, {"name": "y", "lengthM": 1}
                """).body("errors", hasSize(2)).body("errors.pointer", hasItem("/circuits/1"));
    }

    @Test
    void refusesABankAndAShortCircuitCurrentAtOnce() {
        refused("""
                {"name": "x", "currentA": 1, "lengthM": 1, "prospectiveShortCircuitA": 900,
                 "bank": {"chemistry": "agm", "capacityAh": 100}}
                """).body("errors", hasSize(1));
    }

    @Test
    void refusesAnEmptyListAndTwoCircuitsOfOneName() {
        RunningApp.json("{\"circuits\": []}")
                .post("/v1/circuits")
                .then()
                .statusCode(422)
                .body("errors[0].pointer", equalTo("/circuits"));
        refused("""
                {"name": "x", "currentA": 1, "lengthM": 1}, {"name": "x", "currentA": 2, "lengthM": 1}
                """).body("errors", not(hasSize(0)));
    }

    @Test
    void standsTheSmallestAndTheLargestFigures() {
        circuits("""
                {"name": "tiny", "currentA": 0.01, "lengthM": 0.01},
                {"name": "huge", "powerW": 1000000, "lengthM": 1000, "voltageV": 1},
                {"name": "hot", "currentA": 5, "lengthM": 1, "ambientC": 150, "insulationC": 60},
                {"name": "cold", "currentA": 5, "lengthM": 1, "ambientC": -60, "bundledConductors": 100}
                """)
                .body("circuits.feasible", equalTo(List.of(true, false, false, true)))
                .body("circuits[2].shortfall.code", equalTo("too-hot"));
    }

    private static ValidatableResponse circuits(String circuits) {
        return RunningApp.json("{\"circuits\": [" + circuits + "]}")
                .config(DOUBLES)
                .post("/v1/circuits")
                .then()
                .statusCode(200);
    }

    private static ValidatableResponse refused(String circuits) {
        return RunningApp.json("{\"circuits\": [" + circuits + "]}")
                .post("/v1/circuits")
                .then()
                .statusCode(422)
                .contentType("application/problem+json");
    }

    // 30 A for three hours ask for a 40 A blade, which carries twice its rating for 5 s at most: 4 x 1600 x 5 = 32,000
    // A2s.
    @Test
    void aCableOutlastsWhatItsBladeLetsThrough() {
        JsonNode circuit = Answers.of(
                        "/v1/circuits", "{'circuits':[{'name':'heater','currentA':30,'lengthM':1,'insulationC':105}]}")
                .at("/circuits/0");
        assertThat(circuit.at("/fuse/ratingA").doubleValue()).isEqualTo(40);
        assertThat(circuit.at("/fuse/letThroughA2s").doubleValue()).isEqualTo(32_000);
        assertThat(circuit.at("/conductor/outlastedA2s").doubleValue()).isGreaterThan(32_000);
    }
}
