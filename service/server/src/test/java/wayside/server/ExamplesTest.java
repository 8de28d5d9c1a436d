package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every operation has an example, and answers it as committed, to the last digit. */
class ExamplesTest {
    static List<Project.Example> examples() {
        return Project.examples();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void answersItsExampleAsCommitted(Project.Example example) {
        String answer = RunningApp.json(example.request())
                .post(example.operation().path())
                .then()
                .statusCode(200)
                .extract()
                .asString();
        Path committed = Project.EXAMPLES.resolve(example.name() + ".response.json");
        if (Project.REGENERATE) {
            Project.write(committed, Project.pretty(answer));
        }
        assertThat(Project.pretty(answer)).isEqualTo(Project.read(committed));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void givesTheSameBytesForTheSameRequest(Project.Example example) {
        byte[] first = answer(example);
        assertThat(answer(example)).isEqualTo(first);
    }

    private static byte[] answer(Project.Example example) {
        return RunningApp.json(example.request())
                .post(example.operation().path())
                .then()
                .extract()
                .asByteArray();
    }
}
