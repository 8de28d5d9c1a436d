package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The core doesn't know where in a request its question stands: each thing brings its place. */
class PointersTest {
    private static final Path SOURCES = Path.of("src/main/java");

    /** But for the folders of the class path. */
    private static final Pattern POINTER = Pattern.compile("\"/(?!wayside/)[^\"]*");

    @Test
    void noStringOfTheCoreIsAnAbsolutePointer() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            List<Path> sources =
                    files.filter(file -> file.toString().endsWith(".java")).toList();
            assertThat(sources).hasSizeGreaterThan(100);
            assertThat(sources).flatExtracting(PointersTest::pointers).isEmpty();
        }
    }

    private static List<String> pointers(Path file) {
        return POINTER.matcher(read(file))
                .results()
                .map(MatchResult::group)
                .map(pointer -> file.getFileName() + ": " + pointer)
                .toList();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
