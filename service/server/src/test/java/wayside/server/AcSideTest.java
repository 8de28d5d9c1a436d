package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The mains side of a recommended system. */
class AcSideTest {
    private static final String FRIDGE = "{'name':'fridge','powerW':45,'hoursPerDay':24,'dutyCycle':0.4}";
    private static final String KETTLE = "{'name':'kettle','supply':'ac','powerW':1500,'hoursPerDay':0.2}";

    private static JsonNode recommend(String loads, double hookupHours, String system) {
        return Answers.of(
                "/v1/recommendation",
                ("{'loads':[%s],'trip':{'stays':[{'place':{'latitude':44,'longitude':7},'month':6,'nights':3,"
                                + "'hookupHoursPerDay':%s}]},'system':{%s}}")
                        .formatted(loads, hookupHours, system));
    }

    // Sources: caravans by IEC 60364-7-721, as secondary pages give it: 30 mA, a 16 A inlet, a lead of 2.5 mm2 up to 25
    // m. NFPA 70
    // 551.46: a cord of at most 9 m; 551.73: 30 A sites. A class A interrupter opens at 4 to 6 mA, from memory.
    @ParameterizedTest
    @CsvSource({"230, 10, rcd, 0.03, 16, 25", "120, 30, gfci, 0.006, 30, 9"})
    void theInletAndTheResidualCurrentDeviceGoByTheVoltage(
            double volts, double limitA, String device, double opensA, double inletA, double leadM) {
        JsonNode ac = recommend(
                        FRIDGE + "," + KETTLE, 4, "'mains':{'voltageV':%s,'hookupLimitA':%s}".formatted(volts, limitA))
                .get("acSide");
        assertThat(ac.get("residualCurrentDevice").asText()).isEqualTo(device);
        assertThat(ac.get("residualCurrentA").doubleValue()).isEqualTo(opensA);
        assertThat(ac.at("/inlet/ratingA").doubleValue()).isEqualTo(inletA);
        assertThat(ac.at("/inlet/longestLeadM").doubleValue()).isEqualTo(leadM);
        for (JsonNode circuit : ac.get("circuits")) {
            assertThat(circuit.get("breakerA").doubleValue())
                    .isGreaterThanOrEqualTo(circuit.get("currentA").doubleValue());
        }
    }

    // Source: NFPA 70 551.54(C): neutral is insulated in the vehicle; on shore the bond is at the site.
    @Test
    void neutralIsBondedAtASourceThatRunsAloneAndNeverOnShore() {
        JsonNode both = recommend(FRIDGE + "," + KETTLE, 4, "").get("acSide");
        assertThat(both.get("neutralBondedOnShore").booleanValue()).isFalse();
        assertThat(both.get("neutralBondedAtInverter").booleanValue()).isTrue();
        JsonNode shoreAlone = recommend(FRIDGE, 4, "").get("acSide");
        assertThat(shoreAlone.get("neutralBondedAtInverter").booleanValue()).isFalse();
    }

    @Test
    void whereThereIsNoMainsNothingIsSaidOfIt() {
        assertThat(recommend(FRIDGE, 0, "").has("acSide")).isFalse();
    }

    // 30 kW at 120 V are 250 A.
    @Test
    void whatNoBreakerCarriesIsAShortfall() {
        JsonNode answer = recommend(
                "{'name':'oven','supply':'ac','powerW':25000,'hoursPerDay':0.2}",
                0,
                "'busVoltageV':48,'mains':{'voltageV':120},'inverter':{'continuousW':30000}");
        assertThat(Answers.codes(answer.get("shortfalls"))).contains("no-ac-breaker");
    }
}
