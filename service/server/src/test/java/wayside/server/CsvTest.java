package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.response.Response;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists that a spreadsheet takes come as tables: the same figures as in JSON, by the names of the fields. */
class CsvTest {
    private static final String CSV = "text/csv";

    @ParameterizedTest
    @CsvSource({
        "circuits, circuits, circuits",
        "solar-yield, solar-yield, months",
        "recharge-time, recharge-time, curve",
        "recommendation, recommendation.by-chance, curve"
    })
    void aTableHoldsTheFiguresOfTheList(String operation, String example, String list) {
        String request = Project.read(ExampleFiles.request(Project.EXAMPLES, example));
        Response sent = ask(operation, request, CSV);
        sent.then().statusCode(200).contentType(CSV);
        JsonNode entries = Project.tree(
                        ask(operation, request, "application/json").asString())
                .path(list);
        List<List<String>> lines = parse(sent.asString());
        assertThat(lines).hasSize(entries.size() + 1);
        List<String> head = lines.get(0);
        assertThat(head).doesNotHaveDuplicates().hasSizeGreaterThan(2);
        for (int row = 0; row < entries.size(); row++) {
            JsonNode entry = entries.get(row);
            for (int column = 0; column < head.size(); column++) {
                JsonNode field = entry.at('/' + head.get(column).replace('.', '/'));
                String cell = lines.get(row + 1).get(column);
                if (field.isNumber()) {
                    assertThat(new BigDecimal(cell)).isEqualByComparingTo(field.decimalValue());
                } else {
                    assertThat(cell).isEqualTo(field.asText(""));
                }
            }
        }
    }

    @Test
    void aNameWithACommaAndAQuoteStaysOneCell() {
        String request = "{'circuits': [{'name': 'a, ?b?', 'powerW': 60, 'lengthM': 2, 'voltageV': 12}]}"
                .replace('\'', '"')
                .replace("?", "\\\"");
        String text = ask("circuits", request, CSV).asString();
        assertThat(text).contains("\r\n\"a, \"\"b\"\"\",");
        assertThat(parse(text).get(1).get(0)).isEqualTo("a, \"b\"");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "text/csv                            | text/csv",
                "text/*                              | text/csv",
                "application/json;q=0.5, text/csv    | text/csv",
                "application/json, text/csv          | application/json",
                "text/csv;q=0.2, */*;q=0.1           | text/csv",
                "text/csv;q=0.1, */*;q=0.2           | application/json",
                "*/*                                 | application/json",
            })
    void whatTheClientLikesBestComes(String accept, String type) {
        Response sent = ask("circuits", Project.read(ExampleFiles.request(Project.EXAMPLES, "circuits")), accept);
        sent.then().statusCode(200).contentType(type);
        assertThat(sent.getHeaders().getValues("Vary")).contains("Accept");
    }

    @Test
    void whatIsNoTableIsRefusedWithTheWayToOne() {
        String byDays = Project.read(ExampleFiles.request(Project.EXAMPLES, "recommendation"));
        ask("recommendation", byDays, CSV)
                .then()
                .statusCode(406)
                .body("type", equalTo("/problems/not-acceptable"))
                .body("detail", containsString("target.chanceOfRunningFlat"));
        ask("energy-budget", Project.read(ExampleFiles.request(Project.EXAMPLES, "energy-budget")), CSV)
                .then()
                .statusCode(406)
                .body("detail", containsString("application/json"));
    }

    @Test
    void aTableHasNoWayToItsFigures() {
        RunningApp.json(Project.read(ExampleFiles.request(Project.EXAMPLES, "circuits")))
                .header("Accept", CSV)
                .queryParam("explain", "all")
                .post("/v1/circuits")
                .then()
                .statusCode(400)
                .body("detail", containsString("without the way"));
    }

    private static Response ask(String operation, String request, String accept) {
        return RunningApp.json(request).header("Accept", accept).post("/v1/" + operation);
    }

    /** As RFC 4180 has it. */
    private static List<List<String>> parse(String text) {
        List<List<String>> lines = new ArrayList<>();
        assertThat(text).endsWith("\r\n");
        for (String line : text.split("\r\n", -1)) {
            lines.add(Arrays.stream(line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1))
                    .map(cell -> cell.startsWith("\"")
                            ? cell.substring(1, cell.length() - 1).replace("\"\"", "\"")
                            : cell)
                    .toList());
        }
        lines.remove(lines.size() - 1);
        return lines;
    }
}
