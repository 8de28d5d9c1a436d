package wayside.server;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import wayside.server.contract.Endpoint;
import wayside.server.http.Operations;

/** The project's own files, and how they are written anew. */
final class Project {
    static final Path OPENAPI = Path.of("../../openapi");
    static final Path EXAMPLES = OPENAPI.resolve("examples");

    /** Set by {@code -Dwayside.regenerate=true}: what is committed is written instead of compared. */
    static final boolean REGENERATE = Boolean.getBoolean("wayside.regenerate");

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    private Project() {}

    /** The operations that take a body. */
    static List<Endpoint> operations() {
        return Operations.standard().endpoints().stream()
                .filter(endpoint -> endpoint.request() != null)
                .toList();
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read " + file + "; see DEVELOPERS.md, how to add an operation", e);
        }
    }

    static void write(Path file, String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One example of an operation. */
    record Example(Endpoint operation, String name) {
        String request() {
            return read(ExampleFiles.request(EXAMPLES, name));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    /** All examples of all operations. */
    static List<Example> examples() {
        return operations().stream().flatMap(Project::examples).toList();
    }

    private static Stream<Example> examples(Endpoint operation) {
        try {
            return ExampleFiles.of(EXAMPLES, operation.id()).stream().map(name -> new Example(operation, name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String example(Endpoint operation) {
        return read(EXAMPLES.resolve(operation.id() + ".request.json"));
    }

    static JsonNode tree(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** JSON with a line for each field, every figure with the digits that it came with. */
    static String pretty(String json) {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        try {
            return MAPPER.writer(new DefaultPrettyPrinter().withObjectIndenter(lines))
                            .writeValueAsString(tree(json))
                    + "\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
