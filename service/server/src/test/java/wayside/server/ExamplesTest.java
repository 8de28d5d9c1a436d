package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wayside.server.contract.Endpoint;

/** Every operation has an example, and answers it as committed, to the last digit. */
class ExamplesTest {
    static java.util.List<Endpoint> operations() {
        return Project.operations();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("operations")
    void answersItsExampleAsCommitted(Endpoint operation) {
        String answer = RunningApp.json(Project.example(operation))
                .post(operation.path())
                .then()
                .statusCode(200)
                .extract()
                .asString();
        Path committed = Project.EXAMPLES.resolve(operation.id() + ".response.json");
        if (Project.REGENERATE) {
            Project.write(committed, Project.pretty(answer));
        }
        assertThat(Project.pretty(answer)).isEqualTo(Project.read(committed));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("operations")
    void givesTheSameBytesForTheSameRequest(Endpoint operation) {
        byte[] first = answer(operation);
        assertThat(answer(operation)).isEqualTo(first);
    }

    private static byte[] answer(Endpoint operation) {
        return RunningApp.json(Project.example(operation))
                .post(operation.path())
                .then()
                .extract()
                .asByteArray();
    }
}
