package wayside.server;

import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasKey;

import io.restassured.config.JsonConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.path.json.config.JsonPathConfig.NumberReturnType;
import org.junit.jupiter.api.Test;

/** The energy budget over HTTP. */
class EnergyBudgetTest {
    private static final RestAssuredConfig DOUBLES =
            RestAssuredConfig.config().jsonConfig(JsonConfig.jsonConfig().numberReturnType(NumberReturnType.DOUBLE));

    // Source: trade article on sizing a module system for an off-grid application, small cabin load list;
    // printed: 1,130 Wh a day.
    @Test
    void agreesWithThePublishedCabinListOverHttp() {
        RunningApp.json("""
                        {"standbyW": 0, "loads": [
                          {"name": "LED", "powerW": 10, "quantity": 4, "hoursPerDay": 5},
                          {"name": "laptop", "powerW": 60, "hoursPerDay": 4},
                          {"name": "router", "powerW": 10, "hoursPerDay": 24},
                          {"name": "fridge", "powerW": 50, "hoursPerDay": 8},
                          {"name": "pump", "powerW": 100, "hoursPerDay": 0.5}]}
                        """)
                .config(DOUBLES)
                .post("/v1/energy-budget")
                .then()
                .statusCode(200)
                .body("dailyTotalWh", closeTo(1130, 1e-9))
                .body("derivation.figures", hasKey("/dailyTotalWh"))
                .body("loads.name", hasItem("router"));
    }

    @Test
    void namesTheDefaultsThatTheRequestLeftOpen() {
        RunningApp.json("""
                        {"loads": [{"name": "kettle", "supply": "ac", "powerW": 1000, "hoursPerDay": 0.2}]}
                        """)
                .post("/v1/energy-budget")
                .then()
                .statusCode(200)
                .body("assumptions.field", hasItem("/standbyW"))
                .body("assumptions.field", hasItem("/inverter/hoursPerDay"))
                .body("cautions[0].code", equalTo("inverter-idle"));
    }
}
