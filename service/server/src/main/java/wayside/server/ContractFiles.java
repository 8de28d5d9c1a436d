package wayside.server;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.fasterxml.jackson.dataformat.yaml.util.StringQuotingChecker;
import io.swagger.v3.core.util.Json31;
import io.swagger.v3.oas.models.OpenAPI;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import wayside.server.contract.Contract;
import wayside.server.contract.Endpoint;
import wayside.server.contract.OpenContract;
import wayside.server.http.Operations;

/** Writes the contract while the project is built, so that the service starts without making it. */
public final class ContractFiles {
    private ContractFiles() {}

    /**
     * Writes {@code openapi.json} and {@code openapi.yaml}, and {@code openapi.generators.json} for generators of clients,
     * and {@code engine.properties}.
     *
     * @param args folder to write to, folder of the examples
     */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        EngineFile.write(folder);
        OpenAPI document = Contract.of(Operations.standard().endpoints(), examples(Path.of(args[1])));
        JsonNode tree = Json31.mapper().valueToTree(document);
        Files.writeString(folder.resolve("openapi.json"), json().writeValueAsString(tree));
        Files.writeString(folder.resolve("openapi.generators.json"), json().writeValueAsString(OpenContract.of(tree)));
        Files.writeString(folder.resolve("openapi.yaml"), yaml().writeValueAsString(tree));
    }

    private static JsonMapper json() {
        return JsonMapper.builder(JsonFactory.builder()
                        .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                        .build())
                .build();
    }

    /** To YAML 1.1 a bare 8E+1 is a text, and a bare 6 no text. */
    private static YAMLMapper yaml() {
        return new YAMLMapper(YAMLFactory.builder()
                .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                .enable(YAMLGenerator.Feature.MINIMIZE_QUOTES)
                .enable(YAMLGenerator.Feature.ALWAYS_QUOTE_NUMBERS_AS_STRINGS)
                .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
                .disable(YAMLGenerator.Feature.SPLIT_LINES)
                .stringQuotingChecker(new TimesQuoted())
                .build());
    }

    /** Nor is a bare 18:30: it is a number to the base of sixty. */
    private static final class TimesQuoted extends StringQuotingChecker.Default {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean needToQuoteValue(String value) {
            return super.needToQuoteValue(value) || value.matches("[0-9]+(:[0-9]+)+");
        }
    }

    private static Map<String, Map<String, JsonNode>> examples(Path folder) throws IOException {
        Map<String, Map<String, JsonNode>> examples = new HashMap<>();
        for (Endpoint endpoint : Operations.standard().endpoints()) {
            Map<String, JsonNode> mine = new TreeMap<>();
            for (String name : ExampleFiles.of(folder, endpoint.id())) {
                mine.put(
                        name,
                        new ObjectMapper()
                                .readTree(ExampleFiles.request(folder, name).toFile()));
            }
            examples.put(endpoint.id(), mine);
        }
        return examples;
    }
}
