package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No writer knows where in an answer it writes: figures are placed relative to where it was called. */
class PointersTest {
    private static final Path SERVER = Path.of("src/main/java/wayside/server");

    @Test
    void noStringOfAWriterIsAnAbsolutePointer() throws IOException {
        try (Stream<Path> files = Files.walk(SERVER)) {
            List<Path> writers = files.filter(
                            file -> file.getFileName().toString().matches("(.*Writer|Figures|Tail)\\.java"))
                    .toList();
            assertThat(writers).hasSizeGreaterThan(10);
            assertThat(writers)
                    .filteredOn(file -> Project.read(file).contains("\"/"))
                    .isEmpty();
        }
    }
}
