package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A client that makes a change it was told of, or asks with an inverse answer, is told the same figure again: same operation,
 * same runs, same seed. The trips are invented.
 */
class ChangesComeTrueTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String SUMMER = """
            {"loads": [{"name": "fridge", "powerW": 45, "hoursPerDay": 24, "dutyCycle": 0.4},
                       {"name": "hob", "supply": "ac", "powerW": 1200, "hoursPerDay": 0.25},
                       {"name": "laptop", "supply": "ac", "powerW": 60, "hoursPerDay": 3.33, "tier": "comfort"}],
             "trip": {"stays": [
               {"place": {"latitude": 45, "longitude": 7}, "month": 5, "nights": 4, "drivingHoursPerDay": 0.3},
               {"place": {"latitude": 50, "longitude": 8}, "month": 4, "nights": 3, "hookupHoursPerDay": 0.5}]},
             "runs": 400, "seed": 2}
            """;
    private static final String WINTER = """
            {"loads": [{"name": "furnace", "powerW": 25, "hoursPerDay": 12},
                       {"name": "freezer", "supply": "ac", "currentA": 0.7, "voltageV": 120, "hoursPerDay": 24,
                        "dutyCycle": 0.3, "surgeFactor": 4}],
             "trip": {"stays": [
               {"place": {"latitude": 46, "longitude": 7}, "month": 1, "nights": 5, "drivingHoursPerDay": 1,
                "ambient": {"meanC": -4, "dailySwingC": 10}}]},
             "runs": 400, "seed": 7}
            """;

    private static ObjectNode read(String text) {
        try {
            return (ObjectNode) JSON.readTree(text);
        } catch (java.io.IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static ObjectNode ask(String operation, ObjectNode body) {
        return read(RunningApp.json(body.toString())
                .header("Prefer", "return=minimal")
                .post("/v1/" + operation)
                .then()
                .statusCode(200)
                .extract()
                .asString());
    }

    private static double chance(String operation, ObjectNode body) {
        return ask(operation, body).at("/chanceOfRunningFlat/value").doubleValue();
    }

    private static ObjectNode built(String trip, double nominalWh) {
        ObjectNode request = read(trip);
        request.set("system", read("""
                        {"busVoltageV": 12, "chemistry": "lfp", "solarPowerW": 150, "alternatorChargerA": 20,
                         "shoreChargerW": 200, "panel": {"azimuthDegrees": 90}}
                        """));
        system(request).put("nominalEnergyWh", nominalWh);
        return request;
    }

    private static ObjectNode system(ObjectNode request) {
        return (ObjectNode) request.get("system");
    }

    private static void grow(ObjectNode parent, String field, double by) {
        parent.put(field, parent.path(field).asDouble(0) + by);
    }

    private static void scale(JsonNode load, double factor) {
        String field = load.has("powerW") ? "powerW" : "currentA";
        ((ObjectNode) load).put(field, load.get(field).doubleValue() * factor);
    }

    /** The inverter that stands in the vehicle, told by the energy budget of the same loads. */
    private static void keepInverter(ObjectNode request) {
        ObjectNode budget = JSON.createObjectNode();
        budget.set("loads", request.get("loads"));
        system(request).set("inverter", ask("energy-budget", budget).get("inverter"));
    }

    private static ObjectNode made(JsonNode change, ObjectNode asked) {
        ObjectNode request = asked.deepCopy();
        switch (change.get("code").textValue()) {
            case "more-panel" -> grow(system(request), "solarPowerW", number(change, "power"));
            case "more-battery" ->
                system(request)
                        .put(
                                "nominalEnergyWh",
                                system(request).get("nominalEnergyWh").doubleValue() * (1 + number(change, "more")));
            case "stronger-charger" -> system(request).put("alternatorChargerA", number(change, "current"));
            case "tilt-panel" -> system(request).putObject("panel").put("tiltDegrees", 30);
            case "warmer-battery" -> request.withObject("/place").put("where", "cabin");
            case "heated-battery" -> request.withObject("/place/heater").put("powerW", number(change, "power"));
            case "less-load" -> {
                keepInverter(request);
                JsonNode one = change.at("/parameters/load/text");
                for (JsonNode load : request.get("loads")) {
                    if (one.isMissingNode() || one.equals(load.get("name"))) {
                        scale(load, 0.8);
                    }
                }
            }
            case "inverter-off" -> {
                keepInverter(request);
                ((ObjectNode) system(request).get("inverter")).put("hoursPerDay", number(change, "hours"));
            }
            case "more-driving" ->
                request.at("/trip/stays").forEach(stay -> grow((ObjectNode) stay, "drivingHoursPerDay", 1));
            case "more-hookup" ->
                request.at("/trip/stays").forEach(stay -> grow((ObjectNode) stay, "hookupHoursPerDay", 1));
            default -> throw new IllegalArgumentException(change.toString());
        }
        return request;
    }

    private static double number(JsonNode change, String parameter) {
        return change.at("/parameters/" + parameter + "/number").doubleValue();
    }

    private static List<String> falseChanges(String operation, ObjectNode request, JsonNode told) {
        List<String> wrong = new ArrayList<>();
        for (JsonNode change : told.get("whatHelps")) {
            double again = chance(operation, made(change, request));
            if (again != change.get("chanceOfRunningFlat").doubleValue()) {
                wrong.add(change + " comes out as " + again);
            }
        }
        return wrong;
    }

    @ParameterizedTest
    @ValueSource(strings = {SUMMER, WINTER})
    void whatHelpsABuiltSystemComesTrue(String trip) {
        ObjectNode request = built(trip, trip.equals(SUMMER) ? 7000 : 6500);
        ObjectNode told = ask("endurance", request);
        assertThat(falseChanges("endurance", request, told)).isEmpty();
        assertThat(told.get("comparedRuns").intValue()).isEqualTo(400);
        assertThat(told.at("/whatHelps/0/chanceWithoutChange")).isEqualTo(told.at("/chanceOfRunningFlat/value"));
    }

    @ParameterizedTest
    @ValueSource(strings = {SUMMER, WINTER})
    void theLoadFactorComesTrue(String trip) {
        ObjectNode request = built(trip, 4000);
        double factor = ask("endurance", request).at("/inverse/loadFactor").doubleValue();
        assertThat(factor).isPositive();
        assertThat(chance("endurance", scaled(request, factor))).isLessThanOrEqualTo(0.05);
        assertThat(chance("endurance", scaled(request, factor + 15.0 / 2048))).isGreaterThan(0.05);
    }

    private static ObjectNode scaled(ObjectNode asked, double factor) {
        ObjectNode request = asked.deepCopy();
        keepInverter(request);
        request.get("loads").forEach(load -> scale(load, factor));
        return request;
    }

    @Test
    void theNightsComeTrue() {
        ObjectNode request = built(SUMMER, 7000);
        ObjectNode inverse = (ObjectNode) ask("endurance", request).get("inverse");
        int nights = inverse.get("nights").intValue();
        assertThat(inverse.get("nightsRuns").intValue()).isEqualTo(400);
        assertThat(nights).isGreaterThan(4);
        assertThat(chance("endurance", lasting(request, nights))).isLessThanOrEqualTo(0.05);
        assertThat(chance("endurance", lasting(request, nights + 1))).isGreaterThan(0.05);
    }

    private static ObjectNode lasting(ObjectNode asked, int nights) {
        ObjectNode request = asked.deepCopy();
        ((ObjectNode) request.at("/trip/stays/1")).put("nights", nights - 4);
        return request;
    }

    @ParameterizedTest
    @ValueSource(strings = {SUMMER, WINTER})
    void whatHelpsARecommendedSystemComesTrue(String trip) {
        ObjectNode wish = read(trip);
        wish.putObject("target").put("chanceOfRunningFlat", 0.05);
        ObjectNode told = ask("recommendation", wish);
        ObjectNode request = wish.deepCopy();
        ObjectNode system = request.putObject("system");
        system.set("busVoltageV", told.at("/battery/busVoltageV"));
        system.set("nominalEnergyWh", told.at("/battery/nominalEnergyWh"));
        system.put("solarPowerW", told.at("/solar/powerW").asDouble(0));
        told.get("assumptions").forEach(assumption -> {
            if (assumption.path("label").asText().equals("place of the battery")) {
                request.withObject("/place")
                        .put("where", assumption.get("value").asText());
            }
        });
        system.put("alternatorChargerA", told.at("/alternator/chargerCurrentA").asDouble(0));
        system.put("shoreChargerW", told.at("/shore/chargerPowerW").asDouble(0));
        assertThat(chance("recommendation", request))
                .isEqualTo(told.at("/chanceOfRunningFlat/value").doubleValue());
        assertThat(falseChanges("recommendation", request, told)).isEmpty();
        told.get("whatHelps").forEach(change -> assertThat(change.get("chanceWithoutChange"))
                .isEqualTo(told.at("/chanceOfRunningFlat/value")));
    }

    // Each change to the trip that is told is asked again, and one step less of it.
    @Test
    void whatASmallerSystemNeedsComesTrue() {
        ObjectNode wish = read(WINTER);
        wish.putObject("target").put("chanceOfRunningFlat", 0.05);
        JsonNode told = ask("recommendation", wish).get("smallerSystem");
        ObjectNode request = wish.deepCopy();
        ObjectNode system = request.putObject("system");
        system.set("nominalEnergyWh", told.get("nominalEnergyWh"));
        system.set("solarPowerW", told.get("solarPowerW"));
        system.set("alternatorChargerA", told.get("alternatorChargerA"));
        request.putObject("place").put("where", "cabin");
        assertThat(chance("recommendation", request)).isGreaterThan(0.05);
        List<String> kinds = new ArrayList<>();
        for (JsonNode change : told.get("changes")) {
            double with = change.get("chanceOfRunningFlat").doubleValue();
            double less = change.get("chanceOneStepLess").doubleValue();
            assertThat(with).isLessThanOrEqualTo(0.05);
            assertThat(less).isGreaterThan(0.05);
            switch (change.get("code").textValue()) {
                case "more-driving" -> {
                    double hours = number(change, "hours");
                    assertThat(chance("recommendation", driving(request, hours)))
                            .isEqualTo(with);
                    assertThat(chance("recommendation", driving(request, hours - 0.5)))
                            .isEqualTo(less);
                }
                case "shorter-trip" -> {
                    int nights = (int) number(change, "nights");
                    assertThat(nights).isLessThan(5);
                }
                case "plug-in-every" -> assertThat(number(change, "nights")).isBetween(1.0, 5.0);
                default -> throw new IllegalArgumentException(change.toString());
            }
            kinds.add(change.get("code").textValue());
        }
        assertThat(kinds).contains("more-driving");
    }

    private static ObjectNode driving(ObjectNode asked, double moreHours) {
        ObjectNode request = asked.deepCopy();
        grow((ObjectNode) request.at("/trip/stays/0"), "drivingHoursPerDay", moreHours);
        return request;
    }
}
