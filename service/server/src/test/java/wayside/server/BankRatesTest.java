package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the maker of a bank says that it bears goes before what its chemistry lets expect. */
class BankRatesTest {
    private static final String KETTLE =
            "{'name':'kettle','supply':'ac','powerW':2000,'hoursPerDay':0.1,'surgeW':3600}";
    private static final String TRIP =
            "{'stays':[{'place':{'latitude':44,'longitude':7},'month':6,'nights':3,'drivingHoursPerDay':2}]}";
    private static final String BANK =
            "'busVoltageV':12,'nominalEnergyWh':3840,'inverter':{'continuousW':2500,'surgeW':4000,'hoursPerDay':1}";

    private static JsonNode recommend(String more) {
        return Answers.of(
                "/v1/recommendation", "{'loads':[%s],'trip':%s,'system':{%s%s}}".formatted(KETTLE, TRIP, BANK, more));
    }

    // 2 kW at 12.0 V and a tenth of loss are some 185 A: 300 Ah of LFP give them, a bank of 150 A at most does not.
    @Test
    void aBankThatGivesLessThanItsChemistryIsDrawnTooHard() {
        assertThat(Answers.law(recommend(""), "discharge-current")
                        .get("verdict")
                        .asText())
                .isEqualTo("holds");
        JsonNode limited = recommend(",'maximumDischargeA':150");
        assertThat(Answers.codes(limited.get("shortfalls"))).contains("drawn-too-hard");
        assertThat(Answers.law(limited, "discharge-current").get("allowed").doubleValue())
                .isEqualTo(150);
        assertThat(limited.at("/shortfalls/0/text").asText())
                .doesNotContain("battery of at least")
                .contains("put 2 such batteries side by side");
    }

    @Test
    void aBankThatGivesMoreThanItsChemistryMayBeSmaller() {
        JsonNode strong = Answers.of(
                "/v1/recommendation",
                "{'loads':[%s],'trip':%s,'system':{%s,'maximumDischargeA':250,'peakDischargeA':500}}"
                        .formatted(KETTLE, TRIP, BANK.replace("3840", "1920")));
        assertThat(Answers.codes(strong.get("shortfalls"))).isEmpty();
        JsonNode plain = Answers.of(
                "/v1/recommendation",
                "{'loads':[%s],'trip':%s,'system':{%s}}".formatted(KETTLE, TRIP, BANK.replace("3840", "1920")));
        assertThat(Answers.codes(plain.get("shortfalls"))).contains("drawn-too-hard");
    }

    @Test
    void aStartIsJudgedByTheFigureForAStart() {
        JsonNode answer = recommend(",'peakDischargeA':300,'maximumDischargeA':250");
        assertThat(Answers.law(answer, "start-current").get("allowed").doubleValue())
                .isEqualTo(300);
        assertThat(Answers.codes(answer.get("shortfalls"))).contains("started-too-hard");
    }

    @Test
    void chargersAreHeldToWhatMayEnter() {
        JsonNode answer = recommend(",'maximumChargeA':20,'solarPowerW':600,'alternatorChargerA':0");
        assertThat(Answers.law(answer, "charge-current").get("allowed").doubleValue())
                .isEqualTo(20);
        assertThat(Answers.codes(answer.get("cautions"))).contains("limit-the-controllers");
        JsonNode engine = recommend(",'maximumChargeA':20,'alternatorChargerA':40");
        assertThat(Answers.codes(engine.get("shortfalls"))).contains("charged-too-hard");
    }

    // The sturdiest fuse of the tables breaks 50 kA.
    @Test
    void aShortThatTheMakerStatesIsBrokenOrItIsAShortfall() {
        JsonNode weak = recommend(",'shortCircuitA':4000");
        assertThat(weak.at("/battery/prospectiveShortCircuitA").doubleValue()).isEqualTo(4000);
        assertThat(weak.at("/circuits/0/fuse/minimumInterruptA").doubleValue()).isEqualTo(4000);
        JsonNode fierce = recommend(",'shortCircuitA':80000");
        assertThat(Answers.law(fierce, "breaking-capacity").get("verdict").asText())
                .isEqualTo("broken");
        assertThat(Answers.codes(fierce.get("shortfalls"))).contains("no-fuse-type");
    }

    @Test
    void anEstimateAboveAnyFuseIsToBeConfirmedAndNoShortfall() {
        JsonNode answer = Answers.of(
                "/v1/recommendation",
                "{'loads':[%s],'trip':%s,'system':{%s}}".formatted(KETTLE, TRIP, BANK.replace("3840", "30000")));
        assertThat(answer.at("/battery/prospectiveShortCircuitA").doubleValue()).isGreaterThan(50_000);
        assertThat(Answers.codes(answer.get("shortfalls"))).isEmpty();
        assertThat(Answers.codes(answer.get("cautions"))).contains("confirm-fault-current", "fuse-per-battery");
    }

    // Source: ABYC E-11, July 2025, 11.10.1.4.1, as quoted: any parallel bank above 500 Ah.
    @Test
    void batteriesSideBySideAboveFiveHundredAmpereHoursAreFusedEach() {
        JsonNode answer = recommend(",'rules':'abyc-e11'");
        assertThat(names(answer)).doesNotContain("each battery");
        String large =
                "{'loads':[{'name':'heater','powerW':100,'hoursPerDay':24}],'trip':%s,'system':{'busVoltageV':12,"
                        + "'rules':'%s'},'target':{'autonomyDays':2}}";
        JsonNode fused = Answers.of("/v1/recommendation", large.formatted(TRIP, "abyc-e11"));
        int parallel = fused.at("/battery/buyable/parallelCount").intValue();
        assertThat(parallel).isGreaterThan(1);
        assertThat(fused.at("/circuits/0/name").asText()).isEqualTo("each battery");
        assertThat(fused.at("/circuits/0/count").intValue()).isEqualTo(parallel);
        assertThat(fused.at("/circuits/0/fuse/ratingA").doubleValue())
                .isGreaterThanOrEqualTo(fused.at("/circuits/1/currentA").doubleValue() / parallel);
        assertThat(Answers.codes(fused.get("cautions"))).doesNotContain("fuse-per-battery");
        JsonNode elsewhere = Answers.of("/v1/recommendation", large.formatted(TRIP, "nec"));
        assertThat(names(elsewhere)).doesNotContain("each battery");
    }

    @Test
    void anEnduranceIsHeldToTheSameFigures() {
        String body = "{'loads':[%s],'trip':%s,'runs':50,'system':{'chemistry':'lfp',%s%s}}";
        JsonNode plain = Answers.of("/v1/endurance", body.formatted(KETTLE, TRIP, BANK, ""));
        assertThat(Answers.law(plain, "discharge-current").get("verdict").asText())
                .isEqualTo("holds");
        JsonNode limited = Answers.of("/v1/endurance", body.formatted(KETTLE, TRIP, BANK, ",'maximumDischargeA':150"));
        assertThat(Answers.law(limited, "discharge-current").get("verdict").asText())
                .isEqualTo("broken");
    }

    // 3,840 Wh of LFP at 13.6 V and 30 A: 408 W, and at 10 A a third of it.
    @Test
    void aRechargeIsHeldToWhatMayEnter() {
        String body = "{'system':{'busVoltageV':12,'chemistry':'lfp','nominalEnergyWh':3840,'shoreChargerW':408%s}}";
        double plain =
                Answers.of("/v1/recharge-time", body.formatted("")).get("hours").doubleValue();
        double held = Answers.of("/v1/recharge-time", body.formatted(",'maximumChargeA':10"))
                .get("hours")
                .doubleValue();
        assertThat(held).isGreaterThan(2.5 * plain);
    }

    @Test
    void aStartBelowTheFigureForHoursIsRefused() {
        RunningApp.json("{'loads':[%s],'trip':%s,'system':{%s,'maximumDischargeA':150,'peakDischargeA':100}}"
                        .formatted(KETTLE, TRIP, BANK)
                        .replace('\'', '"'))
                .post("/v1/recommendation")
                .then()
                .statusCode(422)
                .body("errors[0].pointer", equalTo("/system/peakDischargeA"))
                .body("errors[0].accepted", equalTo("at least maximumDischargeA"));
    }

    private static List<String> names(JsonNode answer) {
        return answer.get("circuits").findValuesAsText("name");
    }
}
