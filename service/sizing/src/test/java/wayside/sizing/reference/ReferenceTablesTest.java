package wayside.sizing.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ReferenceTablesTest {
    private static final List<String> HEADER =
            List.of("document", "table", "subject", "units", "conditions", "basis", "standing");

    @Test
    void theIndexNamesEveryTableAndNothingElse() throws IOException, URISyntaxException {
        Path index =
                Path.of(Objects.requireNonNull(ReferenceTables.class.getResource("/wayside/sizing/reference/index.txt"))
                        .toURI());
        Path folder = Objects.requireNonNull(index.getParent());
        try (Stream<Path> files = Files.walk(folder)) {
            List<String> onDisk = files.filter(file -> file.toString().endsWith(".csv"))
                    .map(file -> folder.relativize(file)
                            .toString()
                            .replace('\\', '/')
                            .replace(".csv", ""))
                    .sorted()
                    .toList();
            assertThat(ReferenceTables.names()).containsExactlyInAnyOrderElementsOf(onDisk);
        }
    }

    @Test
    void everyTableSaysWhereItComesFrom() {
        for (String name : ReferenceTables.names()) {
            ReferenceTable table = ReferenceTables.table(name);
            assertThat(table.header().keySet()).as(name).containsAll(HEADER);
            assertThat(table.source().title()).as(name).isNotBlank();
            assertThat(table.rows()).as(name).isNotEmpty();
        }
    }

    @Test
    void anUnknownTableIsNotFound() {
        assertThat(ReferenceTables.find("../../secret")).isEmpty();
    }
}
