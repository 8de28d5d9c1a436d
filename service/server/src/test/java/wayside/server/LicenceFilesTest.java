package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Apache-2.0 4(a), EPL-2.0 3.1 and MIT ask for the licence's text beside what is handed on. */
class LicenceFilesTest {
    private static final Path STANDARDS = Path.of("src/main/licences");
    private static final Path OURS = Path.of("../../LICENSE");
    /** Libraries that the running service needs: by what they are for, not by the list that is under test. */
    private static final Pattern RUNTIME = Pattern.compile("(javalin|jetty|jakarta.servlet|jakarta.validation|kotlin"
            + "|annotations|jackson-(core|databind|annotations)|hibernate|jboss|classmate|micrometer|HdrHistogram"
            + "|prometheus|logback|slf4j|jspecify|solarpositioning).*jar");

    @TempDir
    private Path folder;

    @Test
    void everyLibraryHasTheWholeTextOfItsLicence() throws IOException {
        List<Path> jars = Collections.list(getClass().getClassLoader().getResources("META-INF/MANIFEST.MF")).stream()
                .filter(url -> url.getProtocol().equals("jar"))
                .map(url -> Path.of(
                        URI.create(url.getPath().substring(0, url.getPath().indexOf('!')))))
                .filter(file -> RUNTIME.matcher(file.getFileName().toString()).matches())
                .toList();
        assertThat(jars).hasSizeGreaterThan(25);
        new LicenceFiles(STANDARDS, OURS).write(jars, folder);
        for (Path jar : jars) {
            assertThat(texts(jar))
                    .as(jar.getFileName().toString())
                    .anyMatch(text -> text.contains("Redistribution. You may reproduce and distribute copies")
                            || text.contains("Eclipse Public License - v 2.0")
                            || text.contains("Permission is hereby granted")
                            || text.contains("Redistributions in binary form must reproduce"));
        }
    }

    @Test
    void aLibraryOfNoKnownLicenceEndsTheBuild() throws IOException {
        Path jar = folder.resolve("nameless-1.0.jar");
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream entries = new JarOutputStream(out)) {
            entries.putNextEntry(new JarEntry("META-INF/NOTICE"));
        }
        assertThatThrownBy(() -> new LicenceFiles(STANDARDS, OURS).write(List.of(jar), folder.resolve("out")))
                .hasMessage("No licence text is known of [nameless-1.0.jar]");
    }

    private List<String> texts(Path jar) throws IOException {
        try (Stream<Path> files =
                Files.list(folder.resolve(jar.getFileName().toString().replaceFirst("\\.jar$", "")))) {
            return files.map(LicenceFilesTest::read).toList();
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
