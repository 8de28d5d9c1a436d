package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
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

    /** What other clients have sent lends a slow one no time: a rate is its own. */
    @Test
    void endsAWaitForABodyThatComesTooSlowlyHoweverMuchOthersSent() throws IOException {
        Settings settings = Settings.from(Map.of("WAYSIDE_PORT", "0"));
        try (App app = App.create(settings).start()) {
            for (int i = 0; i < 4; i++) {
                RawRequest.send(
                        app.port(),
                        "POST /v1/energy-budget HTTP/1.1\r\nHost: x\r\nConnection: close\r\n"
                                + "Content-Type: application/json\r\nContent-Length: 5000000\r\n\r\n"
                                + " ".repeat(5_000_000));
            }
            assertThat(drop(app.port())).startsWith("HTTP/1.1 408");
        }
    }

    private static final List<String> HEAD = List.of(
            "POST /v1/energy-budget HTTP/1.1",
            "Host: x",
            "Content-Type: application/json",
            "Content-Length: 9000",
            "",
            "");

    /** Sends ten bytes every tenth of a second until it is answered. */
    private static String drop(int port) throws IOException {
        try (Socket socket = new Socket("localhost", port)) {
            OutputStream out = socket.getOutputStream();
            out.write(String.join("\r\n", HEAD).getBytes(StandardCharsets.ISO_8859_1));
            socket.setSoTimeout(100);
            for (int sent = 0; sent < 9000; sent += 10) {
                out.write(" ".repeat(10).getBytes(StandardCharsets.ISO_8859_1));
                byte[] answer = new byte[2000];
                try {
                    return new String(
                            answer, 0, Math.max(0, socket.getInputStream().read(answer)), StandardCharsets.UTF_8);
                } catch (java.net.SocketTimeoutException e) {
                    assertThat(sent).isLessThan(9000); // no answer yet
                }
            }
            return "served";
        }
    }
}
