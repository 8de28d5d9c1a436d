package wayside.server;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * The examples of an operation: {@code <operation>.request.json}, and others as {@code <operation>.<name>.request.json}; what
 * stands before {@code .request.json} is an example's name.
 */
final class ExampleFiles {
    private static final String REQUEST = ".request.json";

    private ExampleFiles() {}

    /** Names of the examples of an operation, the plain one first. */
    static List<String> of(Path folder, String operation) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(file -> file.endsWith(REQUEST))
                    .map(file -> file.substring(0, file.length() - REQUEST.length()))
                    .filter(name -> name.equals(operation) || name.startsWith(operation + "."))
                    .sorted()
                    .toList();
        }
    }

    static Path request(Path folder, String name) {
        return folder.resolve(name + REQUEST);
    }
}
