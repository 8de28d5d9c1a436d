package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The scripts of {@code deploy} on machines that lack something: every program that they meet is made up here. */
class ScriptsTest {
    private static final Path DEPLOY = Path.of("../../deploy");

    @TempDir
    private Path folder;

    private Path programs;
    private Path calls;

    @BeforeEach
    void aMachineWithEverything() throws IOException {
        programs = Files.createDirectories(folder.resolve("programs"));
        calls = folder.resolve("calls");
        program("id", "echo 0");
        program("env", "exec /usr/bin/env \"$@\"");
        program("java", "echo 'openjdk version \"17.0.15\" 2025-04-15' >&2");
        program("javac", "echo 'javac 17.0.15'");
        program("mvn", "echo mvn \"$@\" >>" + calls);
        program("apt-get", "echo apt-get \"$@\" >>" + calls);
    }

    @Test
    void aMachineWithEverythingIsLeftAlone() throws Exception {
        assertThat(prepare("java")).isEqualTo(new Ended(0, List.of()));
        assertThat(calls).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({
        "java, openjdk version \"11.0.27\" 2025-04-15, Java 11",
        "java, openjdk version \"1.8.0_452\", Java 8",
        "javac, javac 11.0.27, Java 11",
        "javac, Unable to locate a Java Runtime., no Java that runs"
    })
    void anOldJavaIsOneLine(String tool, String version, String found) throws Exception {
        program(tool, "echo '" + version + "' >&2");
        assertThat(prepare("java"))
                .isEqualTo(new Ended(
                        1,
                        List.of("Wayside needs Java 17 or newer; " + programs.resolve(tool) + " is " + found
                                + ". Put a newer JDK first in PATH, and in JAVA_HOME if you set it.")));
    }

    @Test
    void withoutATerminalTheCommandToTypeIsSaidAndNothingInstalled() throws Exception {
        Files.delete(programs.resolve("mvn"));
        assertThat(prepare("java"))
                .isEqualTo(new Ended(
                        1,
                        List.of(
                                "Wayside needs: mvn. In packages: maven",
                                "To install them: apt-get update && apt-get install --no-install-recommends maven")));
        assertThat(calls).doesNotExist();
    }

    @Test
    void withoutAptTheNeedsAreSaid() throws Exception {
        Files.delete(programs.resolve("mvn"));
        Files.delete(programs.resolve("javac"));
        Files.delete(programs.resolve("apt-get"));
        assertThat(prepare("--yes", "java"))
                .isEqualTo(new Ended(
                        1,
                        List.of(
                                "Wayside needs: javac mvn. In packages: openjdk-17-jdk-headless maven",
                                "Please install them yourself, for this machine has no apt-get.")));
    }

    @Test
    void yesInstallsUnasked() throws Exception {
        Files.delete(programs.resolve("mvn"));
        assertThat(prepare("--yes", "java").code()).isEqualTo(0);
        assertThat(calls).hasContent("apt-get update -qq\napt-get install -y -qq --no-install-recommends maven\n");
        assertThat(DEPLOY.resolve("check")).content().contains("deploy/prepare --yes ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"openapi/examples/a.request.json", "service/sizing/src/main/A.java", "widget/src/main/a.js"})
    void theJarIsBuiltAnewWhenAPartOfItIsNewerAndOnlyThen(String part) throws Exception {
        Path project = project();
        assertThat(build(project)).isEqualTo(new Ended(0, List.of()));
        assertThat(calls).doesNotExist();

        age(project.resolve(part), 10);
        assertThat(build(project).code()).isEqualTo(0);
        assertThat(calls).content().startsWith("mvn ").contains(" package ");
        assertThat(build(project)).isEqualTo(new Ended(0, List.of()));
    }

    @Test
    void theJarIsBuiltAnewWhenAFileWasTakenAway() throws Exception {
        Path project = project();
        Files.delete(project.resolve("widget/src/main/a.js"));
        assertThat(build(project).code()).isEqualTo(0);
        assertThat(calls).content().startsWith("mvn ");
    }

    @Test
    void theBuildTellsItsModulesItsFilesAndItsFaults() throws Exception {
        Path project = project();
        Files.delete(project.resolve("service/server/target/wayside.jar"));
        program("mvn", """
                echo '[INFO] Scanning for projects...'
                echo '[INFO] Building Wayside sizing core 0.1.0-SNAPSHOT   [2/4]'
                for i in $(seq 120); do echo "Downloaded from central: https://repo.example/$i (3 kB at 9 kB/s)"; done
                echo '[INFO] Building jar: /somewhere/wayside.jar'
                echo '[ERROR] No compiler is provided in this environment.'
                exit 3""");
        assertThat(build(project))
                .isEqualTo(new Ended(
                        3,
                        List.of(
                                "Building Wayside: 2 to 10 minutes the first time, when Maven fetches what it needs ...",
                                "  Wayside sizing core 0.1.0-SNAPSHOT   [2/4]",
                                "    50 files fetched",
                                "    100 files fetched",
                                "[ERROR] No compiler is provided in this environment.")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"run", "load"})
    void whatStartsTheJarHasItBuiltFirst(String script) throws IOException {
        assertThat(Files.readString(DEPLOY.resolve(script))).containsPattern("(?s)\ndeploy/build\n.* -jar \"\\$jar\"");
    }

    @Test
    void aClientWhoseToolsAreMissingIsNotTriedAndTheyAreNamed() throws Exception {
        for (String tool : List.of("dirname", "mktemp", "chmod", "rm")) {
            program(tool, "PATH=/usr/bin:/bin exec " + tool + " \"$@\"");
        }
        program("curl", "echo curl \"$@\" >>" + calls);
        program("npm", "echo npm \"$@\" >>" + calls);
        assertThat(run(programs.toString(), DEPLOY.resolve("clients"), "typescript", "go"))
                .isEqualTo(new Ended(
                        0,
                        List.of(
                                "client       generates  compiles   round-trips",
                                "typescript   not tried: this machine has no node",
                                "go           not tried: this machine has no go")));
        assertThat(calls)
                .content()
                .contains("curl -sf http://localhost:1/openapi.generators.json")
                .doesNotContain("npm");
    }

    /** A project of one file for each part, older than its jar. */
    private Path project() throws IOException {
        Path project = folder.resolve("project");
        for (String file : List.of(
                "pom.xml",
                "openapi/examples/a.request.json",
                "service/sizing/pom.xml",
                "service/sizing/src/main/A.java",
                "service/server/pom.xml",
                "service/server/src/main/A.java",
                "widget/pom.xml",
                "widget/src/main/a.js",
                "service/server/target/wayside.jar")) {
            Files.createDirectories(project.resolve(file).getParent());
            Files.createFile(project.resolve(file));
        }
        Files.createDirectory(project.resolve("deploy"));
        Files.copy(DEPLOY.resolve("build"), project.resolve("deploy/build"));
        try (Stream<Path> files = Files.walk(project)) {
            for (Path file : files.toList()) {
                age(file, 100);
            }
        }
        age(project.resolve("service/server/target/wayside.jar"), 50);
        return project;
    }

    private static void age(Path file, int seconds) throws IOException {
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().minusSeconds(seconds)));
    }

    private void program(String name, String text) throws IOException {
        Path file = Files.writeString(programs.resolve(name), "#!/bin/sh\n" + text + "\n");
        assertThat(file.toFile().setExecutable(true)).isTrue();
    }

    /** How a script ended, and every line that it printed. */
    record Ended(int code, List<String> lines) {}

    private Ended prepare(String... arguments) throws Exception {
        return run(programs.toString(), DEPLOY.resolve("prepare"), arguments);
    }

    private Ended build(Path project) throws Exception {
        return run(programs + ":/usr/bin:/bin", project.resolve("deploy/build"));
    }

    private static Ended run(String path, Path script, String... arguments) throws Exception {
        ProcessBuilder builder = new ProcessBuilder("/bin/bash", script.toString());
        builder.command().addAll(List.of(arguments));
        builder.environment().put("PATH", path);
        builder.environment().remove("JAVA_HOME");
        builder.environment().put("WAYSIDE_URL", "http://localhost:1");
        Process process = builder.redirectErrorStream(true).start();
        process.outputWriter().close();
        List<String> lines = process.inputReader().lines().toList();
        return new Ended(process.waitFor(), lines);
    }
}
