package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A program mends what it reads: each fault has a code, and its figures and places as JSON. */
class FaultCodesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'name': 'a', 'powerW': 5, 'hoursPerDay': 1, 'colour': 'red'   | /colour      | unknown-field",
                "'name': 'a', 'powerW': 5, 'powerW': 6, 'hoursPerDay': 1       | /powerW      | duplicate-field",
                "'powerW': 5, 'hoursPerDay': 1                                 | /name        | missing",
                "'name': 'a', 'powerW': null, 'hoursPerDay': 1                 | /powerW      | null",
                "'name': 'a', 'powerW': '5 W', 'hoursPerDay': 1                | /powerW      | wrong-type",
                "'name': 'a', 'powerW': 5, 'hoursPerDay': 1, 'quantity': 1.5   | /quantity    | not-whole",
                "'name': 'a', 'powerW': 5, 'hoursPerDay': 1, 'supply': 'gas'   | /supply      | unknown-code",
                "'name': 'a', 'powerW': 5, 'hoursPerDay': 25                   | /hoursPerDay | out-of-range",
                "'name': '', 'powerW': 5, 'hoursPerDay': 1                     | /name        | wrong-length",
                "'name': 'a', 'powerW': 5, 'windows': [{'from': '7:00', 'to': '08:00'}] | /windows/0/from | wrong-form",
                "'name': 'a', 'powerW': 5, 'currentA': 1, 'hoursPerDay': 1     | /currentA    | conflict",
                "'name': 'a', 'powerW': 5, 'voltageV': 12, 'hoursPerDay': 1    | /voltageV    | needs",
                "'name': 'a', 'hoursPerDay': 1                                 | ''           | missing",
            })
    void saysWhatIsWrong(String load, String field, String code) {
        JsonPath fault = fault(load);
        assertThat(fault.getString("pointer")).isEqualTo("/loads/0" + field);
        assertThat(fault.getString("code")).isEqualTo(code);
    }

    @Test
    void givesTheRangeInFigures() {
        JsonPath fault = fault("'name': 'a', 'powerW': 5, 'hoursPerDay': 25");
        assertThat(fault.getDouble("value")).isEqualTo(25);
        assertThat(fault.getDouble("minimum")).isZero();
        assertThat(fault.getDouble("maximum")).isEqualTo(24);
    }

    @Test
    void listsTheCodesThatAreTaken() {
        JsonPath fault = fault("'name': 'a', 'powerW': 5, 'hoursPerDay': 1, 'supply': 'gas'");
        assertThat(fault.getString("value")).isEqualTo("gas");
        assertThat(fault.<String>getList("allowed")).containsExactly("dc", "ac");
    }

    @Test
    void namesWhatAFieldDoesNotGoWith() {
        JsonPath fault = fault("'name': 'a', 'powerW': 5, 'currentA': 1, 'hoursPerDay': 1");
        assertThat(fault.<String>getList("conflictsWith")).containsExactly("/loads/0/powerW");
    }

    @Test
    void namesWhatAFieldMeansNothingWithout() {
        JsonPath fault = fault("'name': 'a', 'powerW': 5, 'voltageV': 12, 'hoursPerDay': 1");
        assertThat(fault.<String>getList("needs")).containsExactly("/loads/0/currentA");
    }

    @Test
    void namesTheFieldsOfWhichOneIsMissing() {
        JsonPath fault = fault("'name': 'a', 'hoursPerDay': 1");
        assertThat(fault.<String>getList("allowed")).containsExactly("powerW", "currentA");
    }

    @ParameterizedTest
    @CsvSource({
        "powerKW, 1.2, powerW, 1000",
        "powermW, 900, powerW, 0.001",
        "dutyCyclePercent, 40, dutyCycle, 0.01",
    })
    void saysByWhatAFigureInOtherUnitsIsMultiplied(String unknown, double value, String meant, double factor) {
        JsonPath fault = fault("'name': 'a', 'powerW': 5, 'hoursPerDay': 1, '%s': %s".formatted(unknown, value));
        assertThat(fault.getString("meant")).isEqualTo(meant);
        assertThat(fault.getDouble("factor")).isEqualTo(factor);
        assertThat(fault.getString("nearest")).isNull();
    }

    @Test
    void givesNoFactorWhereNoneMakesTheFigureTheOther() {
        JsonPath fault = fault("'name': 'a', 'powerW': 5, 'hoursPerDay': 1, 'surgeA': 3");
        assertThat(fault.getString("meant")).isEqualTo("surgeW");
        assertThat(fault.getString("factor")).isNull();
    }

    /** 50 degrees Fahrenheit are 10 degrees Celsius. */
    @Test
    void shiftsTheZeroOfATemperature() {
        JsonPath fault = refused("{'loads': [{'name': 'a', 'powerW': 5, 'hoursPerDay': 1}], 'ambientF': 50}");
        assertThat(fault.getString("meant")).isEqualTo("ambientC");
        assertThat(50 * fault.getDouble("factor") + fault.getDouble("offset")).isCloseTo(10, within(1e-4));
    }

    private static JsonPath fault(String load) {
        return refused("{'loads': [{%s}]}".formatted(load));
    }

    /** Single quotes stand for double ones. */
    private static JsonPath refused(String body) {
        Response response = RunningApp.json(body.replace('\'', '"')).post("/v1/energy-budget");
        assertThat(response.statusCode()).as(response.asString()).isEqualTo(422);
        return response.jsonPath().setRootPath("errors[0]");
    }
}
