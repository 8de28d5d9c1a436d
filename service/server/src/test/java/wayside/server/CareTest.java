package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What holds with care, over HTTP. */
class CareTest {
    private static final String FRIDGE = "{'name':'fridge','powerW':45,'hoursPerDay':24,'dutyCycle':0.4}";

    private static JsonNode recommend(String stay, String system) {
        return Answers.of(
                "/v1/recommendation",
                ("{'loads':[%s],'trip':{'stays':[{'place':{'latitude':38,'longitude':-3},'month':7,'nights':5%s}]},"
                                + "'system':{%s}}")
                        .formatted(FRIDGE, stay, system));
    }

    // A 30 A charger over 12 m each way needs far more copper than its terminals take.
    @Test
    void aCableThickerThanItsTerminalIsSaidSo() {
        JsonNode answer = recommend(
                ",'drivingHoursPerDay':2", "'alternatorChargerA':30,'circuitLengthsM':{'alternatorCharger':12}");
        assertThat(Answers.codes(answer.get("cautions"))).contains("thicker-than-its-terminal");
        JsonNode near = recommend(
                ",'drivingHoursPerDay':2", "'alternatorChargerA':30,'circuitLengthsM':{'alternatorCharger':2}");
        assertThat(Answers.codes(near.get("cautions"))).doesNotContain("thicker-than-its-terminal");
    }

    // Common practice: one module made for 12 V on a 12 V bank is the most usual array of all. A module of 18 V gives
    // less than 14.6 V
    // and half a volt when its cells are hot on a closed roof.
    @Test
    void aLoneTwelveVoltModulePassesOnATwelveVoltBankAndSaysWhatHeatDoes() {
        JsonNode hot = recommend(",'ambient':{'meanC':22,'dailySwingC':12}", "'solarPowerW':100");
        assertThat(hot.at("/solar/strings/seriesCount").intValue()).isEqualTo(1);
        assertThat(Answers.law(hot, "string-charges").get("verdict").asText()).isEqualTo("holds-with-care");
        assertThat(Answers.codes(hot.get("cautions"))).contains("string-hardly-charges");
        JsonNode cold = recommend(",'ambient':{'meanC':-5,'dailySwingC':4}", "'chemistry':'agm','solarPowerW':100");
        assertThat(Answers.codes(cold.get("cautions"))).doesNotContain("string-hardly-charges", "string-may-not-start");
        JsonNode two = recommend(",'ambient':{'meanC':22,'dailySwingC':12}", "'solarPowerW':200");
        assertThat(two.at("/solar/strings/seriesCount").intValue()).isEqualTo(2);
        assertThat(Answers.law(two, "string-starts").get("verdict").asText()).isEqualTo("holds");
    }

    // The main cable ends in lugs: 6 AWG, 16 mm2, or more. Common practice, no source.
    @Test
    void theMainCableIsAtLeastWhatAStudLugTakes() {
        JsonNode main = recommend("", "'solarPowerW':100").at("/circuits/0");
        assertThat(main.at("/metricConductor/areaMm2").doubleValue()).isGreaterThanOrEqualTo(16);
    }

    @Test
    void snowOnThePanelsTakesItsShareOfTheSun() {
        String body = "{'place':{'latitude':60,'longitude':25},'solarPowerW':400,'panel':{'shadedShare':0%s}}";
        JsonNode clear = Answers.of("/v1/solar-yield", body.formatted(""));
        JsonNode snowed = Answers.of("/v1/solar-yield", body.formatted(",'snowCoveredShare':0.25"));
        assertThat(snowed.at("/months/0/dailyYieldWh").doubleValue())
                .isEqualTo(0.75 * clear.at("/months/0/dailyYieldWh").doubleValue(), Offset.offset(1e-6));
        assertThat(Answers.codes(clear.get("cautions"))).contains("snow");
        assertThat(Answers.codes(snowed.get("cautions"))).doesNotContain("snow");
    }
}
