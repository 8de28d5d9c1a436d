package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** Whoever reads the contract as YAML 1.1, as most readers of YAML do, reads what stands in the JSON. */
class ContractYamlTest {
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.USE_BIG_INTEGER_FOR_INTS)
            .build();

    private final Object json = plain(tree(sent("/openapi.json")));

    @Test
    void theYamlThatIsServedLoadsAsTheJson() {
        assertThat(loaded(sent("/openapi.yaml"))).usingRecursiveComparison().isEqualTo(json);
    }

    @Test
    void theYamlThatIsCommittedLoadsAsTheJson() {
        assertThat(loaded(Project.read(Project.OPENAPI.resolve("openapi.yaml"))))
                .usingRecursiveComparison()
                .isEqualTo(json);
    }

    /** OpenAPI 3.1.0 section 4.8.2.1: the version is a string. */
    @Test
    void theVersionIsAString() {
        assertThat((Map<?, ?>) loaded(sent("/openapi.yaml")))
                .extracting("info.version")
                .isEqualTo("1");
    }

    private static String sent(String path) {
        return RunningApp.request().get(path).then().statusCode(200).extract().asString();
    }

    private static Object loaded(String yaml) {
        return plain(new Yaml(new SafeConstructor(new LoaderOptions())).load(yaml));
    }

    private static Object tree(String json) {
        try {
            return JSON.convertValue(JSON.readTree(json), Object.class);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A tree in which equal numbers are equal, and nothing else is. */
    private static Object plain(Object node) {
        if (node instanceof Map<?, ?> map) {
            Map<Object, Object> fields = new LinkedHashMap<>();
            map.forEach((name, value) -> fields.put(name, plain(value)));
            return fields;
        }
        if (node instanceof List<?> list) {
            List<Object> items = new ArrayList<>();
            list.forEach(item -> items.add(plain(item)));
            return items;
        }
        return node instanceof Number number ? new BigDecimal(number.toString()).stripTrailingZeros() : node;
    }
}
