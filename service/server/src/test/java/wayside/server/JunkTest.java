package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import wayside.server.contract.Endpoint;

/** Nothing that a client sends is our failure, and the contract and the server say yes and no to the same requests. */
class JunkTest {

    @Property(tries = 300)
    void noDamagedBodyIsOurFailure(@ForAll("operations") Endpoint operation, @ForAll long seed) {
        byte[] body = new Junk(seed).damaged(Project.example(operation));
        int status = RunningApp.request()
                .contentType("application/json")
                .body(body)
                .post(operation.path())
                .statusCode();
        assertThat(status).isIn(200, 400, 422);
    }

    @Property(tries = 300)
    void noTextIsOurFailure(@ForAll("operations") Endpoint operation, @ForAll String body) {
        assertThat(RunningApp.json(body).post(operation.path()).statusCode()).isIn(400, 422);
    }

    @Property(tries = 500)
    void theServerTakesWhatTheContractTakesAndNothingElse(@ForAll("operations") Endpoint operation, @ForAll long seed) {
        String body = new Junk(seed).spoiled(Project.example(operation));
        boolean contractTakes = ContractSchema.accepts(ContractSchema.request(operation.path()), body);
        Response response = RunningApp.json(body).post(operation.path());
        if (contractTakes) {
            // Rules that JSON Schema cannot say are told in the descriptions.
            List<String> details = response.jsonPath().getList("errors.detail", String.class);
            assertThat(response.statusCode() == 200 || details.stream().allMatch(BetweenFields::tells))
                    .as("%s%n%s", body, response.asString())
                    .isTrue();
        } else {
            assertThat(response.statusCode()).as(body).isEqualTo(422);
        }
    }

    @Provide
    Arbitrary<Endpoint> operations() {
        return Arbitraries.of(Project.operations());
    }
}
