package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a client is told of a faulty request (RFC 9457 problem documents, RFC 6901 pointers). */
class FaultsTest {
    private static final String LOAD = "{'name': 'fan', 'powerW': 20, 'hoursPerDay': 5}";

    @Test
    void tellsEveryFaultAtOnce() {
        JsonPath problem = refused("""
                {'loads': [
                   {'nme': 'fridge', 'powerW': '45', 'hoursPerDay': 25, 'dutyCycle': -1},
                   {'name': 'x', 'powerW': 1e308, 'windows': [{'from': '24:10', 'to': '1:00'}]},
                   7],
                 'busVoltageV': 13, 'standbyW': null, 'wind': 3}
                """);
        assertThat(problem.getList("errors.pointer"))
                .containsExactly(
                        "/busVoltageV",
                        "/loads/0/dutyCycle",
                        "/loads/0/hoursPerDay",
                        "/loads/0/nme",
                        "/loads/0/powerW",
                        "/loads/1/powerW",
                        "/loads/1/windows/0/from",
                        "/loads/1/windows/0/to",
                        "/loads/2",
                        "/standbyW",
                        "/wind");
        assertThat(problem.getString("type")).isEqualTo("/problems/invalid-fields");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "'powerW': -5, 'hoursPerDay': 1                           | /powerW       | -5      | a number from 0.1 to 1000000",
                "'powerW': 0, 'hoursPerDay': 1                            | /powerW       | 0       | a number from 0.1 to 1000000",
                "'powerW': 1e999, 'hoursPerDay': 1                        | /powerW       | a number beyond 1.8e308 | a number from 0.1 to 1000000",
                "'powerW': true, 'hoursPerDay': 1                         | /powerW       | true    | a number from 0.1 to 1000000",
                "'powerW': [5], 'hoursPerDay': 1                          | /powerW       | a list of 1 | a number from 0.1 to 1000000",
                "'powerW': 5, 'hoursPerDay': 24.5                         | /hoursPerDay  | 24.5    | a number from 0 to 24",
                "'powerW': 5, 'hoursPerDay': 1, 'quantity': 1.5           | /quantity     | 1.5     | a whole number from 1 to 1000",
                "'powerW': 5, 'hoursPerDay': 1, 'quantity': 99999999999   | /quantity     | 99999999999 | a whole number from 1 to 1000",
                "'powerW': 5, 'hoursPerDay': 1, 'supply': 'DC'            | /supply       | \"DC\"  | one of dc, ac",
                "'powerW': 5, 'hoursPerDay': 1, 'tier': 'luxury'           | /tier         | \"luxury\" | one of vital, essential, comfort",
                "'powerW': 5, 'currentA': 2, 'voltageV': 12, 'hoursPerDay': 1 | /currentA | 2       | either powerW or currentA, not both",
                "'currentA': 2, 'hoursPerDay': 1                          | /voltageV     | nothing | a value beside currentA",
                "'hoursPerDay': 1                                         | ``            | neither | powerW or currentA",
                "'powerW': 5, 'currentA': 2, 'hoursPerDay': 1             | /currentA     | 2       | either powerW or currentA, not both",
                "'powerW': 5, 'voltageV': 12, 'hoursPerDay': 1            | /voltageV     | 12      | nothing, or currentA beside it",
                "'voltageV': 12, 'hoursPerDay': 1                         | ``            | neither | powerW or currentA",
                "'powerW': 5, 'windows': [{'from': '7:00', 'to': '08:00'}] | /windows/0/from | \"7:00\" | a local time from 00:00 to 23:59, two digits each: 07:00",
                "'powerW': 5                                              | ``            | neither | hoursPerDay or windows, or both",
                "'powerW': 5, 'hoursPerDay': 1, 'surgeW': 9, 'surgeFactor': 2 | /surgeFactor | 2    | surgeW or surgeFactor, not both",
                "'powerW': 5, 'hoursPerDay': 1, 'surgeW': 4               | /surgeW       | 4       | at least the running power of 5 W",
                "'powerW': 5, 'hoursPerDay': 9, 'windows': [{'from': '22:00', 'to': '06:00'}] | /hoursPerDay | 9 | at most the 8 hours of its windows",
            })
    void saysWhereWhatAndWhatWouldDo(String fields, String field, String received, String accepted) {
        JsonPath problem = refused("{'loads': [{'name': 'x', " + fields + "}]}");
        assertThat(problem.getList("errors")).hasSize(1);
        assertThat(problem.getString("errors[0].pointer")).isEqualTo("/loads/0" + field);
        assertThat(problem.getString("errors[0].received")).isEqualTo(received);
        assertThat(problem.getString("errors[0].accepted")).isEqualTo(accepted);
    }

    @ParameterizedTest
    @CsvSource({
        "power, powerW",
        "PowerW, powerW",
        "hoursPerDy, hoursPerDay",
        "duty_cycle, dutyCycle",
        "voltagV, voltageV"
    })
    void namesTheKnownFieldNearestToAnUnknownOne(String unknown, String nearest) {
        JsonPath problem = refused("{'loads': [{'name': 'x', 'powerW': 5, 'hoursPerDay': 1, '" + unknown + "': 1}]}");
        assertThat(problem.getString("errors[0].nearest")).isEqualTo(nearest);
    }

    @Test
    void doesNotSayBesideAMisspeltNameThatTheRightOneIsMissing() {
        JsonPath problem = refused("{'loads': [{'nme': 'x', 'curentA': 2, 'voltageV': 12, 'hoursPerDay': 1}]}");
        assertThat(problem.getList("errors.pointer")).containsExactly("/loads/0/curentA", "/loads/0/nme");
    }

    @Test
    void escapesPointersAsTheStandardSays() {
        JsonPath problem = refused("{'loads': [" + LOAD + "], 'a/b~c': 1}");
        assertThat(problem.getString("errors[0].pointer")).isEqualTo("/a~1b~0c");
    }

    @Test
    void refusesANameThatStandsTwice() {
        JsonPath problem = refused("{'loads': [" + LOAD + "], 'standbyW': 1, 'standbyW': 2}");
        assertThat(problem.getString("errors[0].pointer")).isEqualTo("/standbyW");
        assertThat(problem.getString("errors[0].detail")).contains("more than once");
    }

    @Test
    void takesAWindowPastMidnightAndRefusesWindowsThatOverlap() {
        String past = "{'loads': [{'name': 'x', 'powerW': 5, 'windows': [{'from': '22:00', 'to': '06:00'}]}]}";
        assertThat(post(past).statusCode()).isEqualTo(200);
        JsonPath problem = refused("{'loads': [{'name': 'x', 'powerW': 5, 'windows':"
                + " [{'from': '22:00', 'to': '06:00'}, {'from': '05:59', 'to': '07:00'}]}]}");
        assertThat(problem.getString("errors[0].pointer")).isEqualTo("/loads/0/windows/1");
        assertThat(problem.getString("errors[0].accepted")).isEqualTo("windows that do not overlap");
    }

    @Test
    void refusesTwoLoadsOfOneName() {
        JsonPath problem = refused("{'loads': [" + LOAD + "," + LOAD + "]}");
        assertThat(problem.getString("errors[0].pointer")).isEqualTo("/loads/1/name");
    }

    @Test
    void refusesNoLoadsAndTenThousand() {
        assertThat(refused("{'loads': []}").getString("errors[0].accepted")).isEqualTo("a list of 1 to 200 objects");
        String many = IntStream.range(0, 10_000).mapToObj(i -> "{}").collect(Collectors.joining(","));
        JsonPath problem = refused("{'loads': [" + many + "]}");
        assertThat(problem.getList("errors")).hasSize(1);
        assertThat(problem.getString("errors[0].received")).isEqualTo("a list of 10000");
    }

    @Test
    void listsAHundredFaultsAndCountsTheRest() {
        String many = IntStream.range(0, 5_000).mapToObj(i -> "'f" + i + "': 0").collect(Collectors.joining(","));
        Response response = post("{" + many + "}");
        assertThat(response.jsonPath().getList("errors")).hasSize(100);
        assertThat(response.jsonPath().getInt("moreErrors")).isEqualTo(4_901);
        assertThat(response.asByteArray()).hasSizeLessThan(64_000);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "``                       | 1 | 1",
                "`{'loads': [NaN]}`       | 1 | 14",
                "`{'loads' 1}`            | 1 | 11",
                "`{'loads': [1,]}`        | 1 | 15",
                "`{} {}`                  | 1 | 4",
                "`{'loads': +1}`          | 1 | 12",
            })
    void saysWhereJsonIsMalformed(String body, int line, int column) {
        Response response = post(body);
        JsonPath problem = response.jsonPath();
        assertThat(response.statusCode()).isEqualTo(400);
        assertThat(problem.getString("type")).isEqualTo("/problems/malformed-json");
        assertThat(problem.getInt("line")).isEqualTo(line);
        assertThat(problem.getInt("column")).isBetween(column - 1, column + 1);
        assertThat(problem.getString("detail")).doesNotContainPattern("[a-z]+\\.[a-z]+\\.[A-Z]|Feature|Jackson|Node");
    }

    @Test
    void saysTheLineOfALongBody() {
        JsonPath problem = post("{\n\n  'loads': [\n    oops]}").jsonPath();
        assertThat(problem.getInt("line")).isEqualTo(4);
    }

    @Test
    void refusesWhatIsTooDeepAndWhatIsNoText() {
        Response deep = post("{'loads': " + "[".repeat(10_000));
        assertThat(deep.statusCode()).isEqualTo(400);
        assertThat(deep.jsonPath().getString("detail")).contains("deeper than 32");
        Response bytes = RunningApp.request()
                .contentType("application/json")
                .body(new byte[] {'{', '"', (byte) 0xff, (byte) 0xfe, '"', ':', '1', '}'})
                .post("/v1/energy-budget");
        assertThat(bytes.statusCode()).isEqualTo(400);
    }

    @ParameterizedTest
    @CsvSource({"[]", "7", "null", "true", "'text'"})
    void refusesAnythingThatIsNoObject(String body) {
        JsonPath problem = refused(body.equals("text") ? "'text'" : body);
        assertThat(problem.getString("errors[0].pointer")).isEmpty();
        assertThat(problem.getString("errors[0].accepted")).startsWith("an object with ");
    }

    @Test
    void quotesNoMoreOfALongTextThanItMust() {
        JsonPath problem = refused("{'loads': [{'name': '" + "x".repeat(5_000) + "', 'powerW': 5, 'hoursPerDay': 1}]}");
        assertThat(problem.getString("errors[0].received")).hasSizeLessThan(150).endsWith("(5000 characters)");
    }

    private static JsonPath refused(String body) {
        Response response = post(body);
        assertThat(response.statusCode()).as(response.asString()).isEqualTo(422);
        assertThat(response.contentType()).isEqualTo("application/problem+json");
        return response.jsonPath();
    }

    /** Single quotes stand for double ones. */
    private static Response post(String body) {
        return RunningApp.json(body.replace('\'', '"')).post("/v1/energy-budget");
    }
}
