package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Unsafe designs made by hand, asked over HTTP: each is a shortfall or a caution by its name, and none is quietly feasible. */
class UnsafeRequestsTest {
    private static final String FRIDGE = "{'name':'fridge','powerW':40,'hoursPerDay':24,'dutyCycle':0.4}";
    private static final String KETTLE = FRIDGE + ",{'name':'kettle','supply':'ac','powerW':2000,'hoursPerDay':0.1}";
    private static final String FAN = "{'name':'fan','powerW':20,'hoursPerDay':8}";
    private static final String LAPTOP = "{'name':'laptop','supply':'ac','powerW':60,'hoursPerDay':2}";
    private static final String PUMP = "{'name':'compressor','powerW':120,'hoursPerDay':1,'surgeW':3000}";

    private static JsonNode recommend(String loads, String stay, String system) {
        return Answers.of(
                "/v1/recommendation",
                ("{'loads':[%s],'trip':{'stays':[{'place':{'latitude':44,'longitude':7},'month':7,'nights':5%s}]},"
                                + "'system':{%s},'target':{'autonomyDays':1}}")
                        .formatted(loads, stay, system));
    }

    private static String loads(String name) {
        return switch (name) {
            case "kettle" -> KETTLE;
            case "fan" -> FAN;
            case "laptop" -> LAPTOP;
            case "compressor" -> PUMP;
            default -> FRIDGE;
        };
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "a kettle on a small bank | kettle | | 'nominalEnergyWh':1000,'busVoltageV':12 | drawn-too-hard",
                "a kettle on AGM of 100 Ah | kettle | | 'nominalEnergyWh':1200,'chemistry':'agm','busVoltageV':12 | drawn-too-hard",
                "a bank that its maker lets give 80 A | kettle | | 'nominalEnergyWh':5000,'maximumDischargeA':80,'busVoltageV':12 | drawn-too-hard",
                "an inverter beyond the bank | laptop | | 'nominalEnergyWh':1280,'inverter':{'continuousW':3000} | inverter-beyond-bank",
                "a start that shuts the bank off | compressor | | 'nominalEnergyWh':640,'busVoltageV':12 | started-too-hard",
                "chargers that cannot be set, 2 C | fan | ,'drivingHoursPerDay':2 | 'nominalEnergyWh':640,'alternatorChargerA':60,'vehicle':{'alternatorRatingA':300} | charged-too-hard",
                "engine and sun together, 2 C | fan | ,'drivingHoursPerDay':2 | 'nominalEnergyWh':640,'alternatorChargerA':30,'solarPowerW':800 | limit-the-controllers",
                "a charger beyond what the maker lets in | fan | ,'hookupHoursPerDay':8 | 'nominalEnergyWh':2560,'shoreChargerW':800,'maximumChargeA':20 | charged-too-hard",
                "flooded cells hardly charged | fan | | 'chemistry':'flooded','nominalEnergyWh':9600,'solarPowerW':200 | charged-too-gently",
                "lithium charged in frost | fridge | ,'ambient':{'meanC':-20,'dailySwingC':4},'drivingHoursPerDay':1 | | too-cold-to-charge",
                "AGM charged in great heat | fridge | ,'ambient':{'meanC':60,'dailySwingC':4},'drivingHoursPerDay':1 | 'chemistry':'agm' | too-hot-to-charge",
                "219 A off an alternator of 70 A | fridge | ,'drivingHoursPerDay':1 | 'nominalEnergyWh':5120,'alternatorChargerA':200,'vehicle':{'alternatorRatingA':70} | alternator-overloaded",
                "a short of 80 kA by the maker | fridge | | 'nominalEnergyWh':5120,'shortCircuitA':80000 | no-fuse-type",
                "an estimate above any fuse | fridge | | 'nominalEnergyWh':30000,'busVoltageV':12 | confirm-fault-current",
                "a large bank without a fuse for each battery | fridge | | 'nominalEnergyWh':12000,'busVoltageV':12 | fuse-per-battery",
                "flooded 48 V above 60 V | fridge | | 'chemistry':'flooded','busVoltageV':48,'nominalEnergyWh':4800 | above-60-v",
                "3 kW of panel on a small roof | fridge | | 'solarPowerW':3000,'roof':{'areaM2':4} | roof-too-small",
                "a bank that its locker does not hold | fridge | | 'locker':{'volumeL':2} | locker-too-small",
                "more than the payload | fridge | | 'vehicle':{'payloadKg':10} | payload-too-small",
                "60 m of thin way to the inverter | kettle | | 'circuitLengthsM':{'inverter':60},'busVoltageV':12 | too-long",
                "an inverter that cannot run the kettle | kettle | | 'inverter':{'continuousW':1000} | inverter-too-small",
                "an inverter that cannot start it | kettle | | 'inverter':{'continuousW':2100,'surgeW':1500} | inverter-surge-too-small",
                "a hookup of 3 A under a kettle | kettle | ,'hookupHoursPerDay':8 | 'mains':{'hookupLimitA':3} | hookup-overloaded",
                "a lone hot module | fan | ,'ambient':{'meanC':30,'dailySwingC':12} | 'solarPowerW':100 | string-hardly-charges",
                "cable thicker than a charger takes | fridge | ,'drivingHoursPerDay':2 | 'alternatorChargerA':30,'circuitLengthsM':{'alternatorCharger':12} | thicker-than-its-terminal",
            })
    void isSaidByItsName(String name, String load, String stay, String system, String code) {
        JsonNode answer = recommend(loads(load), stay == null ? "" : stay, system == null ? "" : system);
        List<String> said = new ArrayList<>(Answers.codes(answer.get("shortfalls")));
        said.addAll(Answers.codes(answer.get("cautions")));
        assertThat(said).as(name).contains(code);
    }
}
