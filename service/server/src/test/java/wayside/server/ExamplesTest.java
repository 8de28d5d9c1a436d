package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every operation has an example, and answers it as committed: texts exactly, figures to a part in 1e12. */
class ExamplesTest {
    private static final double LAST_DIGITS = 1e-12;

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
        if (!isTheSame(answer, Project.read(committed))) {
            assertThat(Project.pretty(answer)).isEqualTo(Project.read(committed));
        }
    }

    /** Another processor may round the last digit of a sine otherwise. */
    private static boolean isTheSame(String answer, String committed) {
        return Project.tree(committed).equals(ExamplesTest::compare, Project.tree(answer));
    }

    private static int compare(JsonNode one, JsonNode other) {
        if (!one.isNumber() || !other.isNumber()) {
            return one.equals(other) ? 0 : 1;
        }
        double a = one.doubleValue();
        double b = other.doubleValue();
        return Math.abs(a - b) <= LAST_DIGITS * Math.max(Math.abs(a), Math.abs(b)) ? 0 : 1;
    }

    @Test
    void aFigureOrAWordThatDiffersIsSeen() {
        assertThat(isTheSame("{'a': [1.0000000000001]}".replace('\'', '"'), "{'a': [1]}".replace('\'', '"')))
                .isTrue();
        for (String other :
                List.of("{'a': [1.00000000001]}", "{'a': ['1']}", "{'a': [1, 1]}", "{'b': [1]}", "{'a': [0]}")) {
            assertThat(isTheSame(other.replace('\'', '"'), "{'a': [1]}".replace('\'', '"')))
                    .as(other)
                    .isFalse();
        }
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
