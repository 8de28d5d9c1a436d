package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What must hold between the parts, asked over HTTP. The rates and limits are common practice, no source: LFP gives its capacity
 * in an hour and takes four fifths of it, AGM half and three tenths.
 */
class SystemLawsTest {
    private static final String FRIDGE = "{'name':'fridge','powerW':40,'hoursPerDay':24,'dutyCycle':0.4}";
    private static final String KETTLE = "{'name':'kettle','supply':'ac','powerW':2000,'hoursPerDay':0.1}";
    private static final String FAN = "{'name':'fan','powerW':20,'hoursPerDay':8}";
    private static final String LAPTOP = "{'name':'laptop','supply':'ac','powerW':60,'hoursPerDay':2}";

    private static String stay(int month, int nights, String more) {
        return "{'stays':[{'place':{'latitude':44,'longitude':7},'month':%d,'nights':%d%s}]}"
                .formatted(month, nights, more);
    }

    private static JsonNode recommend(String loads, String trip, String system, String target) {
        return answer(
                "/v1/recommendation",
                "{'loads':[%s],'trip':%s,'system':{%s},'target':{%s}}".formatted(loads, trip, system, target));
    }

    private static JsonNode answer(String path, String body) {
        return Project.tree(RunningApp.json(body.replace('\'', '"'))
                .post(path)
                .then()
                .statusCode(200)
                .extract()
                .asString());
    }

    private static JsonNode law(JsonNode answer, String code) {
        return StreamSupport.stream(answer.get("laws").spliterator(), false)
                .filter(law -> law.get("code").asText().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " in " + answer.get("laws")));
    }

    private static JsonNode circuit(JsonNode answer, String name) {
        for (JsonNode circuit : answer.get("circuits")) {
            if (circuit.get("name").asText().equals(name)) {
                return circuit;
            }
        }
        throw new AssertionError("no circuit " + name);
    }

    private static List<String> codes(JsonNode list) {
        List<String> codes = new ArrayList<>();
        list.forEach(entry -> codes.add(entry.get("code").asText()));
        return codes;
    }

    // 2 kW at 12.0 V and a tenth of loss are 185 A and more; 66 Ah would give it at 3 C.
    @ParameterizedTest
    @CsvSource({"lfp, 1, 12.0", "agm, 0.5, 10.5"})
    void aKettleAsksByChanceForABankThatCanGiveItsCurrent(String chemistry, double rate, double lowestV) {
        JsonNode answer = recommend(
                FRIDGE + "," + KETTLE,
                stay(6, 3, ",'drivingHoursPerDay':1"),
                "'busVoltageV':12,'chemistry':'" + chemistry + "','inverter':{'hoursPerDay':0.5}",
                "'chanceOfRunningFlat':0.05");
        assertThat(answer.at("/battery/nominalCapacityAh").doubleValue()).isGreaterThan(2000 / lowestV / rate);
        assertThat(law(answer, "discharge-current").get("marginShare").doubleValue())
                .isNotNegative();
    }

    @Test
    void aBankInFrostIsNotChargedByDaysEither() {
        String frost = stay(1, 5, ",'ambient':{'meanC':-20,'dailySwingC':4},'drivingHoursPerDay':1");
        JsonNode answer = recommend(FRIDGE, frost, "", "");
        assertThat(answer.get("feasible").booleanValue()).isFalse();
        assertThat(codes(answer.get("shortfalls"))).containsExactly("too-cold-to-charge");
        assertThat(answer.at("/shortfalls/0/text").asText()).contains("heated cabin", "heater");
        assertThat(answer.at("/alternator/energyPerDayWh").doubleValue()).isZero();
        assertThat(answer.at("/battery/chargeLockedOutInCold").booleanValue()).isTrue();
    }

    @Test
    void aFullBankMayCarryAFrostyWeekendAndTheAnswerSaysThatNothingChargesIt() {
        String frost = stay(1, 2, ",'ambient':{'meanC':-8,'dailySwingC':4}");
        JsonNode answer = recommend(FRIDGE, frost, "'nominalEnergyWh':5120", "");
        assertThat(answer.get("feasible").booleanValue()).isTrue();
        assertThat(codes(answer.get("cautions"))).contains("nothing-charges-it", "cold-charging");
    }

    // ISO 8820-3 by makers' sheets: a blade to 40 A opens within 5 s at twice its rating, a larger one within 1 s at
    // six
    // times. By hand: nearly empty 0.875 of the volts, and at most twice the resistance of four cells of 0.3 mOhm at
    // 100 Ah, four joints of 0.05 mOhm and the cables.
    @Test
    void theLeastShortAtTheFarEndOfACableOpensItsFuse() {
        JsonNode answer = recommend(FRIDGE + "," + KETTLE, stay(6, 3, ""), "'busVoltageV':12", "");
        double cellsOhm =
                0.0012 * 100 / answer.at("/battery/nominalCapacityAh").doubleValue() * 12.8 / 12 + 4 * 0.00005;
        double bankOhm = 12.8 / answer.at("/battery/prospectiveShortCircuitA").doubleValue();
        double nearest = Double.POSITIVE_INFINITY;
        for (JsonNode cable : answer.at("/graph/cables")) {
            if (cable.hasNonNull("endFaultA") && cable.get("from").asText().startsWith("b")) {
                JsonNode circuit = circuit(answer, cable.get("circuit").asText());
                double rating = circuit.at("/fuse/ratingA").doubleValue();
                boolean blade = circuit.at("/fuse/type").asText().startsWith("blade");
                double needed = rating * (blade && rating <= 40 ? 2 : 6);
                double wayOhm = 12.8 / cable.get("endFaultA").doubleValue() - bankOhm;
                double least = 0.875 * 12.8 / (2 * (cellsOhm + wayOhm));
                nearest = Math.min(nearest, 1 - needed / least);
            }
        }
        JsonNode law = law(answer, "fuse-opens-at-the-far-end");
        assertThat(law.get("marginShare").doubleValue()).isCloseTo(nearest, Offset.offset(1e-9));
        assertThat(law.get("verdict").asText()).isEqualTo("holds");
    }

    @Test
    void aTinyBankMayNotOpenALargeFuse() {
        JsonNode answer = recommend(KETTLE, stay(6, 3, ""), "'nominalEnergyWh':120,'chemistry':'agm'", "");
        assertThat(codes(answer.get("cautions"))).contains("fuse-may-not-open");
        assertThat(law(answer, "fuse-opens-at-the-far-end").get("verdict").asText())
                .isEqualTo("holds-with-care");
    }

    @Test
    void anAgmBankInGreatHeatIsNotChargedEither() {
        String heat = stay(7, 5, ",'ambient':{'meanC':60,'dailySwingC':4},'drivingHoursPerDay':1");
        JsonNode answer = recommend(FRIDGE, heat, "'chemistry':'agm'", "");
        assertThat(codes(answer.get("shortfalls"))).containsExactly("too-hot-to-charge");
    }

    // 30 A of engine and 800 W / 13.6 V of sun into 50 Ah, which takes 40 A: the controllers are set to 10 A.
    @Test
    void chargersThatRunTogetherAreSetToWhatTheBankTakes() {
        JsonNode answer = recommend(
                FAN,
                stay(7, 5, ",'drivingHoursPerDay':2"),
                "'nominalEnergyWh':640,'alternatorChargerA':30,'solarPowerW':800",
                "'autonomyDays':1");
        JsonNode law = law(answer, "charge-current");
        assertThat(law.get("verdict").asText()).isEqualTo("holds-with-care");
        assertThat(law.get("allowed").doubleValue()).isEqualTo(40);
        assertThat(law.at("/mend/parameters/setting/number").doubleValue()).isEqualTo(10);
        assertThat(codes(answer.get("cautions"))).contains("limit-the-controllers");
    }

    @Test
    void aChargerThatCannotBeSetIsAShortfall() {
        JsonNode answer = recommend(
                FAN,
                stay(7, 5, ",'drivingHoursPerDay':2"),
                "'nominalEnergyWh':640,'alternatorChargerA':60,'vehicle':{'alternatorRatingA':300}",
                "'autonomyDays':1");
        assertThat(codes(answer.get("shortfalls"))).containsExactly("charged-too-hard");
    }

    // Common practice, no source: a tenth of the capacity is the least that mixes the acid of flooded cells.
    @Test
    void aFloodedBankThatIsHardlyChargedIsSaidSo() {
        JsonNode answer = recommend(
                FAN,
                stay(7, 5, ""),
                "'chemistry':'flooded','nominalEnergyWh':9600,'solarPowerW':200",
                "'autonomyDays':1");
        assertThat(answer.get("feasible").booleanValue()).isTrue();
        assertThat(codes(answer.get("cautions"))).contains("charged-too-gently");
    }

    @Test
    void anInverterThatTheBankCannotFeedSaysWhatCanBeUsed() {
        JsonNode answer = recommend(
                LAPTOP,
                stay(7, 5, ""),
                "'nominalEnergyWh':1280,'inverter':{'continuousW':3000,'hoursPerDay':2}",
                "'autonomyDays':1");
        JsonNode law = law(answer, "discharge-current");
        assertThat(law.get("verdict").asText()).isEqualTo("holds-with-care");
        assertThat(law.at("/mend/code").asText()).isEqualTo("inverter-beyond-bank");
        assertThat(law.at("/mend/parameters/usable/number").doubleValue()).isBetween(1000.0, 1200.0);
    }

    @Test
    void aGivenBankThatIsDrawnTooHardSaysWhichWouldDo() {
        JsonNode answer = recommend(
                KETTLE,
                stay(7, 2, ""),
                "'busVoltageV':12,'nominalEnergyWh':1280,'inverter':{'hoursPerDay':0.5}",
                "'autonomyDays':1");
        JsonNode shortfall = answer.at("/laws");
        assertThat(codes(answer.get("shortfalls"))).contains("drawn-too-hard");
        assertThat(shortfall).isNotEmpty();
        assertThat(law(answer, "discharge-current")
                        .at("/mend/parameters/capacity/number")
                        .doubleValue())
                .isBetween(175.0, 215.0);
    }

    // 200 A at 13.6 V are 219 A and more out of a 70 A alternator.
    @Test
    void anAlternatorGivesItsShareOnly() {
        JsonNode answer = recommend(
                FRIDGE,
                stay(7, 5, ",'drivingHoursPerDay':1"),
                "'nominalEnergyWh':5120,'alternatorChargerA':200,'vehicle':{'alternatorRatingA':70}",
                "");
        assertThat(law(answer, "alternator-share").get("verdict").asText()).isEqualTo("broken");
    }

    @Test
    void anEnduranceIsJudgedByTheSameLaws() {
        JsonNode answer = answer("/v1/endurance", """
                {'system':{'busVoltageV':12,'chemistry':'lfp','nominalEnergyWh':2560,'inverter':{'continuousW':1000}},
                 'loads':[{'name':'hob','supply':'ac','powerW':2500,'hoursPerDay':0.5}],'runs':100,'trip':%s}""".formatted(stay(7, 2, "")));
        assertThat(law(answer, "inverter-runs-the-hardest").get("verdict").asText())
                .isEqualTo("broken");
        assertThat(law(answer, "discharge-current").get("verdict").asText()).isEqualTo("holds");
    }
}
