package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The committed contract is the one that the records make. */
class ContractDriftTest {
    private static final Path WRITTEN = Path.of("target/classes/wayside/server/contract/openapi.yaml");
    private static final Path COMMITTED = Project.OPENAPI.resolve("openapi.yaml");

    @Test
    void theCommittedContractIsTheOneThatTheRecordsMake() {
        String written = Project.read(WRITTEN);
        if (Project.REGENERATE) {
            Project.write(COMMITTED, written);
        }
        assertThat(Project.read(COMMITTED))
                .as("openapi/openapi.yaml has drifted; regenerate it as DEVELOPERS.md says")
                .isEqualTo(written);
    }

    @Test
    void theServiceSendsTheCommittedContract() {
        String sent = RunningApp.request()
                .get("/openapi.yaml")
                .then()
                .statusCode(200)
                .contentType("application/yaml")
                .extract()
                .asString();
        assertThat(sent).isEqualTo(Project.read(COMMITTED));
    }
}
