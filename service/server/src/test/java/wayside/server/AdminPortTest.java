package wayside.server;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.ServerSocket;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The operator's own port: metrics there and nowhere else, health on both, and nothing for customers. */
class AdminPortTest {
    @Test
    void showsTheMetricsAlone() throws IOException {
        int admin = freePort();
        Settings settings = Settings.from(Map.of("WAYSIDE_PORT", "0", "WAYSIDE_ADMIN_PORT", Integer.toString(admin)));
        try (App app = App.create(settings).start()) {
            assertThat(given().port(admin).get("/metrics").asString()).contains("wayside_build_info");
            assertThat(status(admin, "/health/ready")).isEqualTo(200);
            assertThat(status(admin, "/v1")).isEqualTo(404);
            assertThat(given().port(admin).get("/demo/").contentType()).isEqualTo("application/problem+json");
            assertThat(status(app.port(), "/metrics")).isEqualTo(404);
            assertThat(status(app.port(), "/health/ready")).isEqualTo(200);
            assertThat(status(app.port(), "/v1")).isEqualTo(200);
        }
    }

    @Test
    void isAnotherPort() {
        assertThatThrownBy(() -> Settings.from(Map.of("WAYSIDE_ADMIN_PORT", "8080")))
                .hasMessage("WAYSIDE_ADMIN_PORT is '8080', the same as the port; it takes another one, or 0 for none");
    }

    private static int status(int port, String path) {
        return given().port(port).get(path).statusCode();
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }
}
