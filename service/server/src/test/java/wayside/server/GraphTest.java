package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The graph of a recommended system, over HTTP. */
class GraphTest {
    private static final String LOADS = "{'name':'fridge','powerW':45,'hoursPerDay':24,'dutyCycle':0.4},"
            + "{'name':'laptop','supply':'ac','powerW':60,'hoursPerDay':2}";
    private static final String TRIP = "{'stays':[{'place':{'latitude':44,'longitude':7},'month':6,'nights':3,"
            + "'drivingHoursPerDay':2,'hookupHoursPerDay':3}]}";

    private static JsonNode recommend(String system) {
        return Answers.of(
                "/v1/recommendation", "{'loads':[%s],'trip':%s,'system':{%s}}".formatted(LOADS, TRIP, system));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "'busVoltageV':48,'solarPowerW':4200",
                "'busVoltageV':24,'solarPowerW':900,'alternatorChargerA':0",
                "'busVoltageV':12,'nominalEnergyWh':12000,'dcLoadsVoltageV':24"
            })
    void everyCableJoinsTwoPartsAndHasItsCircuit(String system) {
        JsonNode answer = recommend(system);
        List<String> nodes = ids(answer.at("/graph/nodes"));
        assertThat(nodes).doesNotHaveDuplicates().contains("bank", "busbar", "dc-loads", "inverter", "shore-charger");
        assertThat(ids(answer.at("/graph/cables"))).doesNotHaveDuplicates();
        Set<String> ends = new HashSet<>();
        List<String> circuits = new ArrayList<>();
        for (JsonNode cable : answer.at("/graph/cables")) {
            ends.add(cable.get("from").asText());
            ends.add(cable.get("to").asText());
            circuits.add(cable.get("circuit").asText());
        }
        assertThat(ends).containsExactlyInAnyOrderElementsOf(nodes);
        List<String> named = new ArrayList<>(answer.get("circuits").findValuesAsText("name"));
        named.addAll(answer.at("/acSide/circuits").findValuesAsText("name"));
        assertThat(circuits).containsExactlyElementsOf(named);
    }

    // Ohm's law with the 1/56 ohm mm2/m of the German trade, within a fifth: colder copper, rounder wire, two joints.
    @Test
    void aShortAtTheFarEndOfACableDrawsWhatItsSourceGivesBehindIt() {
        JsonNode answer = recommend("'busVoltageV':12,'nominalEnergyWh':2560");
        double sourceA = answer.at("/battery/prospectiveShortCircuitA").doubleValue();
        double volts = answer.at("/battery/bankVoltageV").doubleValue();
        JsonNode main = answer.at("/circuits/0");
        double ohm = main.get("roundTripM").doubleValue()
                / 56
                / Math.max(
                        main.at("/metricConductor/areaMm2").doubleValue(),
                        main.at("/conductor/areaMm2").doubleValue());
        double expected = volts / (volts / sourceA + ohm + 0.0001);
        assertThat(answer.at("/graph/cables/0/endFaultA").doubleValue()).isBetween(expected, 1.2 * expected);
    }

    @Test
    void whatTheCablesLoseAddsUpAlongTheWay() {
        JsonNode answer = recommend("");
        double main = circuit(answer, "battery main").get("voltageDropPercent").doubleValue();
        double inverter = circuit(answer, "inverter").get("voltageDropPercent").doubleValue();
        assertThat(node(answer, "inverter").get("voltageDropPercent").doubleValue())
                .isEqualTo(main + inverter, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(node(answer, "bank").has("voltageDropPercent")).isFalse();
    }

    @Test
    void theMainHasAnIsolatorAndTheMonitorsShunt() {
        JsonNode main = recommend("").at("/graph/cables/0");
        assertThat(main.get("id").asText()).isEqualTo("bank-to-busbar");
        assertThat(main.get("devices").findValuesAsText("kind")).containsExactly("isolator", "shunt");
    }

    private static JsonNode circuit(JsonNode answer, String name) {
        return find(answer.get("circuits"), "name", name);
    }

    private static JsonNode node(JsonNode answer, String id) {
        return find(answer.at("/graph/nodes"), "id", id);
    }

    private static JsonNode find(JsonNode list, String field, String text) {
        for (JsonNode one : list) {
            if (one.get(field).asText().equals(text)) {
                return one;
            }
        }
        throw new AssertionError(text + " in " + list);
    }

    private static List<String> ids(JsonNode list) {
        List<String> ids = new ArrayList<>();
        list.forEach(one -> ids.add(one.get("id").asText()));
        return ids;
    }
}
