package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is suggested for a name or a word that is not known: never a name that makes another figure of the value. */
class SuggestionsTest {
    private static final String SYSTEM = "'system': {'busVoltageV': 12, 'chemistry': 'lfp', 'nominalEnergyWh': 1000%s}";
    private static final String CIRCUIT = "{'circuits': [{'name': 'x', 'currentA': 5, 'lengthM': 2, '%s': 3}]}";

    // Factors: NIST Special Publication 811 (2008), appendix B.8.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "powerKW    | perhaps powerW is meant: in W, 1 kW = 1000 W.",
                "powerKw    | perhaps powerW is meant: in W, 1 kW = 1000 W.",
                "powerkw    | perhaps powerW is meant: in W, 1 kW = 1000 W.",
                "power_kw   | perhaps powerW is meant: in W, 1 kW = 1000 W.",
                "powerMW    | perhaps powerW is meant: in W, 1 MW = 1000000 W.",
                "powermW    | perhaps powerW is meant: in W, 1000 mW = 1 W.",
                "powrKW     | perhaps powerW is meant: in W, 1 kW = 1000 W.",
                "currentMA  | perhaps currentA is meant: in A, 1000 mA = 1 A.",
                "surgeA     | perhaps surgeW is meant: in W, W = A times the voltage.",
                "minutesPerDay | perhaps hoursPerDay is meant: in h, 60 min = 1 h.",
                "dutyCyclePercent | perhaps dutyCycle is meant: a number from 0 to 1.",
                "essential  | perhaps tier is meant: comfort where it was false, essential or vital where it was true.",
            })
    void convertsAndGivesNoNameWhereTheUnitsDiffer(String unknown, String words) {
        JsonPath problem = load("'" + unknown + "': 1.2");
        assertThat(problem.getString("errors[0].detail")).isEqualTo("This field is not known here; " + words);
        assertThat(problem.getString("errors[0].nearest")).isNull();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "nominalEnergyKwh   | nominalEnergyWh is meant: in Wh, 1 kWh = 1000 Wh.",
                "nominalCapacityAh  | nominalEnergyWh is meant: in Wh, Wh = Ah times the nominal voltage of the battery.",
                "capacityAh         | nominalEnergyWh is meant: in Wh, Wh = Ah times the nominal voltage of the battery.",
                "solarPowerKw       | solarPowerW is meant: in W, 1 kW = 1000 W.",
                "panelKW            | solarPowerW is meant: in W, 1 kW = 1000 W.",
                "alternatorChargerW | alternatorChargerA is meant: in A, A = W divided by the voltage.",
                "standbyA           | standbyW is meant: in W, W = A times the voltage.",
            })
    void knowsWhatABankAndAnArrayAreSaidIn(String unknown, String words) {
        JsonPath problem = refused("recharge-time", "{" + SYSTEM.formatted(", '" + unknown + "': 3") + "}");
        assertThat(problem.getString("errors[0].detail")).endsWith("perhaps " + words);
        assertThat(problem.getString("errors[0].nearest")).isNull();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lengthFt   | lengthM is meant: in m, 1 ft = 0.3048 m.",
                "lengthIn   | lengthM is meant: in m, 1 in = 0.0254 m.",
                "lengthCm   | lengthM is meant: in m, 100 cm = 1 m.",
                "ambientF   | ambientC is meant: in C, C = (F - 32) / 1.8.",
                "ambientK   | ambientC is meant: in C, C = K - 273.15.",
            })
    void convertsLengthsAndTemperatures(String unknown, String words) {
        JsonPath problem = refused("circuits", CIRCUIT.formatted(unknown));
        assertThat(problem.getString("errors[0].detail")).endsWith("perhaps " + words);
        assertThat(problem.getString("errors[0].nearest")).isNull();
    }

    @Test
    void energyOfABankThatIsSaidInAmpereHoursIsConverted() {
        JsonPath problem = refused(
                "circuits",
                "{'circuits': [{'name': 'x', 'currentA': 5, 'lengthM': 2, 'bank': {'chemistry': 'lfp', 'capacityWh': 5}}]}");
        assertThat(problem.getList("errors")).hasSize(1);
        assertThat(problem.getString("errors[0].detail"))
                .endsWith("capacityAh is meant: in Ah, Ah = Wh divided by the nominal voltage of the battery.");
    }

    @Test
    void aDifferenceOfTemperatureHasNoZeroToShift() {
        String month = "{'place': {'latitude': 46, 'longitude': 8}, 'months': [{'month': 6, 'ambient': {%s}}]}";
        JsonPath mean = refused("solar-yield", month.formatted("'meanF': 60"));
        assertThat(mean.getList("errors")).hasSize(1);
        assertThat(mean.getString("errors[0].detail")).endsWith("perhaps meanC is meant: in C, C = (F - 32) / 1.8.");
        JsonPath swing = refused("solar-yield", month.formatted("'meanC': 15, 'dailySwingF': 20"));
        assertThat(swing.getString("errors[0].detail"))
                .endsWith("perhaps dailySwingC is meant: in K, 1 F = 0.555556 K.");
    }

    @ParameterizedTest
    @CsvSource({
        "watts, powerW",
        "amps, currentA",
        "volts, voltageV",
        "hours, hoursPerDay",
        "count, quantity",
        "qty, quantity",
        "duty, dutyCycle",
        "power, powerW",
        "power_w, powerW",
        "POWERW, powerW",
        "hoursPrDay, hoursPerDay"
    })
    void knowsACommonWordAndAPrefix(String unknown, String nearest) {
        assertThat(load("'" + unknown + "': 1").getString("errors[0].nearest")).isEqualTo(nearest);
    }

    @ParameterizedTest
    @CsvSource({"lat, latitude", "lng, longitude", "lon, longitude", "long, longitude", "elev, elevationM"})
    void knowsTheShortNamesOfAPlace(String unknown, String nearest) {
        JsonPath problem = refused("solar-yield", "{'place': {'latitude': 46, 'longitude': 8, '" + unknown + "': 1}}");
        assertThat(problem.getString("errors[0].nearest")).isEqualTo(nearest);
    }

    @Test
    void aNameOfTheSameUnitMayBePasted() {
        JsonPath problem = refused("recharge-time", "{" + SYSTEM.formatted(", 'panelW': 200") + "}");
        assertThat(problem.getString("errors[0].nearest")).isEqualTo("solarPowerW");
    }

    @ParameterizedTest
    @CsvSource({
        "LiFePO4, lfp",
        "lithium, lfp",
        "LFP, lfp",
        "lithium iron phosphate, lfp",
        "AGM, agm",
        "floodd, flooded",
    })
    void knowsTheWordsForChemistries(String word, String code) {
        JsonPath problem = refused(
                "recharge-time",
                "{'system': {'busVoltageV': 12, 'nominalEnergyWh': 1000, 'chemistry': '" + word + "'}}");
        assertThat(problem.getString("errors[0].nearest")).isEqualTo(code);
    }

    @ParameterizedTest
    @CsvSource({"mains, ac", "inverter, ac", "230V, ac", "120V, ac", "12 V, dc", "AC, ac"})
    void knowsTheWordsForASupply(String word, String code) {
        assertThat(load("'supply': '" + word + "'").getString("errors[0].nearest"))
                .isEqualTo(code);
    }

    @ParameterizedTest
    @CsvSource({"ABYC, abyc-e11", "ABYC E-11, abyc-e11", "NEC, nec"})
    void knowsTheWordsForRuleSets(String word, String code) {
        JsonPath problem = refused(
                "circuits", "{'circuits': [{'name': 'x', 'currentA': 5, 'lengthM': 2, 'rules': '" + word + "'}]}");
        assertThat(problem.getString("errors[0].nearest")).isEqualTo(code);
    }

    @ParameterizedTest
    @CsvSource({"weight, mass", "cost, price", "Mass, mass"})
    void knowsTheWordsForAnObjective(String word, String code) {
        JsonPath problem = recommendation("'target': {'chanceOfRunningFlat': 0.05, 'objective': '" + word + "'}");
        assertThat(problem.getString("errors[0].nearest")).isEqualTo(code);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'system': {'hoursPerDay': 3}             | /system/inverter/hoursPerDay",
                "'system': {'inverter': {'standbyW': 3}}  | /system/standbyW",
                "'busVoltageV': 12                        | /system/busVoltageV",
                "'rules': 'nec'                           | /system/rules",
                "'nights': 3                              | /trip/stays/0/nights",
                "'lat': 46                                | /trip/stays/0/place/latitude",
            })
    void tellsTheRightPlaceOfAFieldAtTheWrongOne(String fields, String place) {
        JsonPath problem = recommendation(fields);
        assertThat(problem.getString("errors[0].knownAt")).isEqualTo(place);
        assertThat(problem.getString("errors[0].detail")).endsWith("it is known at " + place + ".");
        assertThat(problem.getString("errors[0].nearest")).isNull();
    }

    @Test
    void tellsThePlaceInTheSameElementOfAList() {
        JsonPath problem = refused(
                "energy-budget",
                "{'loads': [{'name': 'a', 'powerW': 5, 'hoursPerDay': 1}, {'name': 'b', 'powerW': 5, 'windows':"
                        + " [{'from': '07:00', 'to': '08:00', 'hoursPerDay': 1}]}]}");
        assertThat(problem.getString("errors[0].knownAt")).isEqualTo("/loads/1/hoursPerDay");
    }

    @ParameterizedTest
    @ValueSource(strings = {"request", "data"})
    void aRequestInAWrapperIsToldToComeOutOfIt(String wrapper) {
        JsonPath problem = refused(
                "energy-budget", "{'" + wrapper + "': {'loads': [{'name': 'a', 'powerW': 5, 'hoursPerDay': 1}]}}");
        assertThat(problem.getList("errors.pointer")).containsExactly("/" + wrapper);
        assertThat(problem.getString("errors[0].detail"))
                .isEqualTo("Send what is in this object, without the object around it.");
    }

    private static JsonPath load(String fields) {
        return refused("energy-budget", "{'loads': [{'name': 'x', 'powerW': 5, 'hoursPerDay': 1, " + fields + "}]}");
    }

    private static JsonPath recommendation(String fields) {
        return refused(
                "recommendation",
                "{'loads': [{'name': 'x', 'powerW': 5, 'hoursPerDay': 1}], 'trip': {'stays': [{'place':"
                        + " {'latitude': 46, 'longitude': 8}, 'month': 6, 'nights': 2}]}, " + fields + "}");
    }

    /** Single quotes stand for double ones. */
    private static JsonPath refused(String operation, String body) {
        Response response = RunningApp.json(body.replace('\'', '"')).post("/v1/" + operation);
        assertThat(response.statusCode()).as(response.asString()).isEqualTo(422);
        return response.jsonPath();
    }
}
