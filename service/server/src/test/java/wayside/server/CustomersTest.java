package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Six invented customers and what a careful upfitter would build for them, worked out by hand: usual figures of the trade,
 * common practice, no source. Each request is asked as it stands, by days of autonomy.
 */
class CustomersTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** A customer's request and the bands that its answer must lie in. */
    private record Customer(String id, JsonNode request, JsonNode bands) {
        static Stream<Customer> of(JsonNode customer) {
            JsonNode bands = customer.get("byDays");
            JsonNode inside = bands.get("inTheCabin");
            String id = customer.get("id").asText();
            if (inside == null) {
                return Stream.of(new Customer(id, customer.get("request"), bands));
            }
            ObjectNode warm = customer.get("request").deepCopy();
            warm.set("place", inside.get("place"));
            return Stream.of(new Customer(id + " in the cabin", warm, inside));
        }

        @Override
        public String toString() {
            return id;
        }
    }

    static Stream<Customer> customers() throws IOException {
        JsonNode file = file();
        return StreamSupport.stream(file.get("customers").spliterator(), false).flatMap(Customer::of);
    }

    private static JsonNode file() throws IOException {
        try (InputStream file = CustomersTest.class.getResourceAsStream("customers.json")) {
            return JSON.readTree(Objects.requireNonNull(file).readAllBytes());
        }
    }

    @ParameterizedTest
    @MethodSource("customers")
    void getsWhatAnUpfitterWouldBuild(Customer customer) {
        JsonPath answer = RunningApp.json(customer.request().toString())
                .post("/v1/recommendation")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
        holds(customer, "bankWh", answer, "battery.nominalEnergyWh");
        holds(customer, "arrayW", answer, "solar.powerW");
        holds(customer, "engineChargerA", answer, "alternator.chargerCurrentA");
        holds(customer, "inverterW", answer, "inverter.continuousW");
        JsonNode buses = customer.bands().get("busV");
        if (buses != null) {
            assertThat(answer.getDouble("battery.busVoltageV"))
                    .as("bus of %s", customer)
                    .isEqualTo(buses.get(0).asDouble());
        }
        JsonNode atMost = customer.bands().get("chargeAtMostA");
        if (atMost != null) {
            assertThat(answer.getDouble("alternator.chargerCurrentA"))
                    .as("engine charger of %s", customer)
                    .isLessThanOrEqualTo(atMost.asDouble());
        }
    }

    /** Outdoors in February nothing enters a lithium bank, and the first mend is the heated cabin. */
    @Test
    void tellsTheSkiBusThatAFrozenBankIsNotCharged() throws IOException {
        JsonNode file = file();
        JsonNode ski = StreamSupport.stream(file.get("customers").spliterator(), false)
                .filter(customer -> customer.get("id").asText().equals("06-ski"))
                .findFirst()
                .orElseThrow()
                .get("request");
        JsonPath answer = RunningApp.json(ski.toString())
                .post("/v1/recommendation")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
        assertThat(answer.getBoolean("feasible")).isFalse();
        assertThat(answer.getString("shortfalls[0].code")).isEqualTo("too-cold-to-charge");
        assertThat(answer.getString("shortfalls[0].text")).contains("heated cabin");
        assertThat(answer.getDouble("alternator.energyPerDayWh")).isZero();
    }

    private static void holds(Customer customer, String band, JsonPath answer, String field) {
        JsonNode limits = customer.bands().get(band);
        if (limits != null) {
            assertThat(answer.getDouble(field))
                    .as("%s of %s", field, customer)
                    .isBetween(limits.get(0).asDouble(), limits.get(1).asDouble());
        }
    }

    /** What is answered is whole batteries and whole modules, on the roof. */
    @ParameterizedTest
    @MethodSource("customers")
    void getsWholeParts(Customer customer) {
        JsonPath answer = RunningApp.json(customer.request().toString())
                .post("/v1/recommendation")
                .jsonPath();
        double bankWh = answer.getDouble("battery.buyable.count")
                * answer.getDouble("battery.buyable.voltageV")
                * answer.getDouble("battery.buyable.capacityAh");
        assertThat(answer.getDouble("battery.nominalEnergyWh")).isCloseTo(bankWh, within(0.1));
        assertThat(bankWh + 0.1).isGreaterThanOrEqualTo(answer.getDouble("battery.needed.energyWh"));
        assertThat(answer.getDouble("solar.powerW"))
                .isEqualTo(answer.getDouble("solar.buyable.count") * answer.getDouble("solar.buyable.modulePowerW"));
        assertThat(answer.getDouble("solar.areaM2")).isLessThanOrEqualTo(answer.getDouble("solar.roofAreaM2"));
    }
}
