package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.path.json.JsonPath;
import org.junit.jupiter.api.Test;

/** A customer who would drive more, if need be. */
class MayDriveTest {
    private static final String JANUARY = """
            {"loads": [{"name": "fridge", "powerW": 45, "hoursPerDay": 24, "dutyCycle": 0.4},
                       {"name": "furnace", "powerW": 25, "hoursPerDay": 14},
                       {"name": "lights", "powerW": 20, "hoursPerDay": 6},
                       {"name": "laptop", "powerW": 60, "hoursPerDay": 5}],
             "trip": {"stays": [{"place": {"latitude": 45, "longitude": 7}, "month": %d, "nights": 14%s}]},
             "place": {"where": "cabin"},
             "target": {"chanceOfRunningFlat": 0.05%s}, "runs": 400}
            """;

    private static JsonPath sized(int month, String driving, String wish) {
        return RunningApp.json(JANUARY.formatted(month, driving, wish))
                .header("Prefer", "return=minimal")
                .post("/v1/recommendation")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }

    @Test
    void drivesAsFewHalfHoursAsWillDo() {
        JsonPath asked = sized(1, "", "");
        JsonPath may = sized(1, "", ", \"mayDriveHours\": 4");
        assertThat(asked.getDouble("battery.autonomyDays")).isGreaterThan(5);
        assertThat(asked.getMap("")).doesNotContainKey("moreDrivingHoursPerDay");
        double more = may.getDouble("moreDrivingHoursPerDay");
        assertThat(more).isBetween(0.5, 4.0);
        assertThat(may.getDouble("battery.autonomyDays")).isLessThanOrEqualTo(5);
        assertThat(may.getString("advice.text")).contains("more driving each day than asked");
        // The same trip with these hours in it needs no more, and half an hour less would not do.
        JsonPath then = sized(1, ", \"drivingHoursPerDay\": " + more, "");
        assertThat(then.getDouble("battery.nominalEnergyWh")).isEqualTo(may.getDouble("battery.nominalEnergyWh"));
        assertThat(then.getDouble("chanceOfRunningFlat.value")).isEqualTo(may.getDouble("chanceOfRunningFlat.value"));
        String less = more > 0.5 ? ", \"drivingHoursPerDay\": " + (more - 0.5) : "";
        assertThat(sized(1, less, "").getDouble("battery.autonomyDays")).isGreaterThan(5);
    }

    @Test
    void drivesNothingMoreWhereTheTripBringsEnough() {
        JsonPath summer = sized(7, ", \"drivingHoursPerDay\": 0.5", ", \"mayDriveHours\": 4");
        assertThat(summer.getMap("")).doesNotContainKey("moreDrivingHoursPerDay");
        assertThat(summer.getBoolean("feasible")).isTrue();
    }
}
