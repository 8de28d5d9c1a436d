package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wayside.server.GeneratedRequests.Generated;

/** The script that ships in deploy/ recomputes answers with an evaluator of its own. */
class AuditTest {
    private static final int GENERATED = 60;

    @TempDir
    private Path folder;

    private record Run(int exit, String output) {}

    @Test
    void recomputesEveryStepOfEveryExample() throws Exception {
        List<Path> answers = new ArrayList<>();
        for (Project.Example example : Project.examples()) {
            answers.add(saved(example.name(), answer(example.operation().path(), example.request())));
        }
        Run run = audit(answers);
        assertThat(run.exit()).as(run.output()).isZero();
    }

    @Test
    void recomputesEveryStepOfGeneratedRequests() throws Exception {
        List<Path> answers = new ArrayList<>();
        for (Generated generated : GeneratedRequests.of(GENERATED)) {
            answers.add(saved("generated-" + answers.size(), answer(generated.path(), generated.body())));
        }
        Run run = audit(answers);
        assertThat(run.exit()).as(run.output()).isZero();
    }

    @Test
    void findsAFigureThatItsExpressionDoesNotGive() throws Exception {
        String budget = "{\"loads\": [{\"name\": \"lamp\", \"powerW\": 5, \"hoursPerDay\": 4}]}";
        String answer = answer("/v1/energy-budget", budget);
        String falsified = answer.replace(
                "\"label\":\"lamp: daily energy\",\"value\":20.0", "\"label\":\"lamp: daily energy\",\"value\":21.0");
        assertThat(falsified).isNotEqualTo(answer);
        Run run = audit(List.of(saved("falsified", falsified)));
        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.output()).contains("E = P h d gives 20.0");
    }

    private static String answer(String path, String body) {
        return RunningApp.json(body).post(path).then().statusCode(200).extract().asString();
    }

    private Path saved(String name, String answer) throws IOException {
        return Files.writeString(folder.resolve(name + ".json"), answer);
    }

    /** The one library that the script needs. */
    private static String jackson() {
        return Stream.of(ObjectMapper.class, JsonFactory.class, JsonIgnore.class)
                .map(type ->
                        type.getProtectionDomain().getCodeSource().getLocation().getPath())
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static Run audit(List<Path> answers) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                jackson(),
                "../../deploy/Audit.java"));
        answers.forEach(answer -> command.add(answer.toString()));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Run(process.waitFor(), output);
    }
}
