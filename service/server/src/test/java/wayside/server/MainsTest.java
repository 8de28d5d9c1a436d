package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;

import com.fasterxml.jackson.databind.JsonNode;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What runs off a hookup does not come out of the battery. */
class MainsTest {
    private static final String FRIDGE = "{'name':'fridge','powerW':45,'hoursPerDay':24,'dutyCycle':0.4}";
    private static final String HEATER =
            "{'name':'heater','supply':'ac','powerW':1200,'windows':[{'from':'19:00','to':'23:00'}]}";
    private static final String SYSTEM =
            "'busVoltageV':12,'chemistry':'lfp','nominalEnergyWh':2560,'shoreChargerW':400,"
                    + "'inverter':{'continuousW':2000}";

    private static String trip(double hookupHours) {
        return "{'stays':[{'place':{'latitude':46,'longitude':8},'month':2,'nights':5,'ambient':{'meanC':12,'dailySwingC':4},'hookupHoursPerDay':%s}]}"
                .formatted(hookupHours);
    }

    private static JsonNode endurance(double hookupHours, String mains) {
        return Answers.of(
                "/v1/endurance",
                "{'loads':[%s,%s],'trip':%s,'runs':100,'system':{%s%s}}"
                        .formatted(FRIDGE, HEATER, trip(hookupHours), SYSTEM, mains));
    }

    private static double chance(JsonNode answer) {
        return answer.at("/chanceOfRunningFlat/value").doubleValue();
    }

    @Test
    void aPluggedInHeaterLeavesTheBatteryAlone() {
        assertThat(chance(endurance(14, ",'mains':{'voltageV':230,'hookupLimitA':10}")))
                .isZero();
        assertThat(chance(endurance(14, ",'mains':{'passThrough':false}"))).isEqualTo(1);
        assertThat(chance(endurance(0, ",'mains':{'hookupLimitA':10}"))).isEqualTo(1);
    }

    // 3 A at 230 V are 690 W: a heater of 1,200 W opens the breaker, so it stays with the inverter.
    @Test
    void aHookupThatCannotRunALoadLeavesItToTheBattery() {
        JsonNode answer = endurance(14, ",'mains':{'hookupLimitA':3}");
        assertThat(chance(answer)).isEqualTo(1);
        JsonNode law = Answers.law(answer, "hookup-carries");
        assertThat(law.get("allowed").doubleValue()).isEqualTo(690);
        assertThat(law.at("/mend/code").asText()).isEqualTo("hookup-overloaded");
    }

    @Test
    void whatIsLeftOpenIsAnAssumption() {
        JsonNode answer = endurance(14, "");
        assertThat(answer.get("assumptions").findValuesAsText("field"))
                .contains("/system/mains/voltageV", "/system/mains/hookupLimitA", "/system/mains/passThrough");
    }

    private static JsonNode recommend(String loads, double hookupHours, String mains, String target) {
        return Answers.of(
                "/v1/recommendation",
                "{'loads':[%s],'trip':%s,'system':{'busVoltageV':12%s},'target':{%s}}"
                        .formatted(loads, trip(hookupHours), mains, target));
    }

    // The heater's 4.8 kWh, by hand, and nothing of an inverter that nobody needs.
    @Test
    void byDaysAHeaterThatRunsNowhereElseNeedsNoInverterAndNoBattery() {
        JsonNode answer = recommend(FRIDGE + "," + HEATER, 14, ",'mains':{'hookupLimitA':10}", "'autonomyDays':1");
        assertThat(answer.at("/energyBudget/hookup/acWh").doubleValue()).isEqualTo(4800, Offset.offset(1e-6));
        assertThat(answer.at("/energyBudget/hookup/powerW").doubleValue()).isEqualTo(2300);
        assertThat(answer.has("inverter")).isFalse();
        JsonNode alone = recommend(FRIDGE, 14, ",'mains':{'hookupLimitA':10}", "'autonomyDays':1");
        assertThat(answer.at("/energyBudget/dailyTotalWh").doubleValue())
                .isEqualTo(alone.at("/energyBudget/dailyTotalWh").doubleValue(), Offset.offset(1e-6));
        assertThat(answer.at("/battery/nominalEnergyWh")).isEqualTo(alone.at("/battery/nominalEnergyWh"));
    }

    @Test
    void byChanceItNeedsNoneEither() {
        JsonNode with =
                recommend(FRIDGE + "," + HEATER, 14, ",'mains':{'hookupLimitA':10}", "'chanceOfRunningFlat':0.05");
        JsonNode alone = recommend(FRIDGE, 14, ",'mains':{'hookupLimitA':10}", "'chanceOfRunningFlat':0.05");
        assertThat(with.at("/battery/nominalEnergyWh")).isEqualTo(alone.at("/battery/nominalEnergyWh"));
    }

    // By hand: 2 W h of every hour of 24, plugged in for 12 of them, so half of it comes off the hookup.
    @Test
    void aLoadThatAlsoRunsElsewhereKeepsItsInverter() {
        JsonNode answer = recommend(
                "{'name':'router','supply':'ac','powerW':20,'hoursPerDay':24}",
                12,
                ",'mains':{'hookupLimitA':6}",
                "'autonomyDays':1");
        assertThat(answer.has("inverter")).isTrue();
        assertThat(answer.at("/energyBudget/hookup/acWh").doubleValue()).isEqualTo(240, Offset.offset(1e-6));
        double sum = 0;
        for (JsonNode hour : answer.at("/energyBudget/hourlyW")) {
            sum += hour.doubleValue();
        }
        assertThat(sum).isEqualTo(answer.at("/energyBudget/dailyTotalWh").doubleValue(), Offset.offset(1e-6));
    }

    // 3 A at 120 V are 360 W, of which a charger gives 0.88.
    @Test
    void theChargerTakesWhatTheHookupLeaves() {
        JsonNode answer = recommend(
                FRIDGE,
                2,
                ",'mains':{'voltageV':120,'hookupLimitA':3},'shoreChargerW':2000,'nominalEnergyWh':5120",
                "'autonomyDays':1");
        assertThat(answer.at("/shore/energyPerDayWh").doubleValue()).isEqualTo(2 * 0.88 * 360, Offset.offset(1e-6));
        JsonNode recharge = Answers.of(
                "/v1/recharge-time",
                "{'system':{'busVoltageV':12,'chemistry':'lfp','nominalEnergyWh':2560,'shoreChargerW':1000,'mains':{'voltageV':120,'hookupLimitA':3}}}");
        assertThat(recharge.get("hours").doubleValue()).isGreaterThan(2560 / (0.88 * 360));
    }

    @Test
    void aHookupThatThereIsNotIsRefused() {
        RunningApp.json(
                        "{'loads':[%s],'trip':%s,'system':{'mains':{'voltageV':400,'hookupLimitA':0,'passThrough':'yes'}}}"
                                .formatted(FRIDGE, trip(4))
                                .replace('\'', '"'))
                .post("/v1/recommendation")
                .then()
                .statusCode(equalTo(422))
                .body(
                        "errors.pointer",
                        hasItems("/system/mains/voltageV", "/system/mains/hookupLimitA", "/system/mains/passThrough"));
    }
}
