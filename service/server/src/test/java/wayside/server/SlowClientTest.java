package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A client that sends a body drop by drop does not hold a thread for long. */
class SlowClientTest {
    @Test
    void endsTheWaitForABodyThatDoesNotCome() throws IOException {
        Settings settings = Settings.from(Map.of("WAYSIDE_PORT", "0", "WAYSIDE_IDLE_TIMEOUT_MS", "300"));
        try (App app = App.create(settings).start();
                Socket socket = new Socket("localhost", app.port())) {
            OutputStream out = socket.getOutputStream();
            out.write(("POST /v1/energy-budget HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n"
                            + "Content-Length: 1000\r\n\r\n{")
                    .getBytes(StandardCharsets.ISO_8859_1));
            out.flush();
            socket.setSoTimeout(10_000);
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            // Never held, and never called our mistake.
            assertThat(answer)
                    .startsWith("HTTP/1.1 408")
                    .contains("Content-Type: application/problem+json", "/problems/request-timeout");
        }
    }
}
