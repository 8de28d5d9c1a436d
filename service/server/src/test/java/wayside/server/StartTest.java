package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** The program as it is started: says that it listens once it does, and why not in one line that says what to do. */
class StartTest {
    private static final String LISTENS = "Wayside listens on ";

    @Test
    void saysThatItListensOnceItAnswers() throws Exception {
        Process process = start(Map.of("WAYSIDE_PORT", "0", "WAYSIDE_HOST", "127.0.0.1"));
        try (BufferedReader out = process.inputReader()) {
            String line = out.readLine();
            while (line != null && !line.startsWith(LISTENS)) {
                line = out.readLine();
            }
            assertThat(line).matches(LISTENS + "(http://127.0.0.1:[0-9]+/) - the demo is at \\1demo/");
            String address = String.valueOf(line).split(" ", -1)[3];
            assertThat(status(address + "health/ready")).isEqualTo(200);
            assertThat(status(address + "demo/")).isEqualTo(200);
        } finally {
            process.destroy();
        }
    }

    @Test
    void namesATakenPortAndAFreeOne() throws Exception {
        try (ServerSocket other = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String port = Integer.toString(other.getLocalPort());
            String line = refusal(Map.of("WAYSIDE_PORT", port, "WAYSIDE_HOST", "127.0.0.1"));
            assertThat(line).matches("Port " + port + " is taken; try WAYSIDE_PORT=[0-9]+ deploy/run");
            int offered = Integer.parseInt(line.replaceAll(".*WAYSIDE_PORT=([0-9]+).*", "$1"));
            new ServerSocket(offered, 1, InetAddress.getLoopbackAddress()).close();
        }
    }

    @Test
    void namesAHostThatNobodyKnows() throws Exception {
        // Source: RFC 6761 section 6.4, no name below .invalid resolves.
        assertThat(refusal(Map.of("WAYSIDE_PORT", "0", "WAYSIDE_HOST", "nosuch.invalid")))
                .isEqualTo("WAYSIDE_HOST is 'nosuch.invalid', a name that leads to no address;"
                        + " leave it out to listen on every address of this machine");
    }

    @Test
    void namesAnAddressOfAnotherMachine() throws Exception {
        // Source: RFC 5737 section 3, 192.0.2.0/24 is for documentation and belongs to no machine.
        assertThat(refusal(Map.of("WAYSIDE_PORT", "0", "WAYSIDE_HOST", "192.0.2.1")))
                .isEqualTo("WAYSIDE_HOST is '192.0.2.1', which is not an address of this machine;"
                        + " leave it out to listen on every address of this machine");
    }

    @Test
    void namesASettingThatItCannotUse() throws Exception {
        assertThat(refusal(Map.of("WAYSIDE_PORT", "abc")))
                .isEqualTo("WAYSIDE_PORT is 'abc'; it takes a whole number from 0 to 65535");
    }

    /** The one line of a start that is refused; all that it prints, and its exit code, are held to that. */
    private static String refusal(Map<String, String> settings) throws Exception {
        Process process = start(settings);
        try {
            List<String> lines = new ArrayList<>();
            process.inputReader().lines().forEach(lines::add);
            assertThat(lines).hasSize(1);
            assertThat(process.waitFor()).isEqualTo(2);
            return lines.get(0);
        } finally {
            process.destroy();
        }
    }

    /** Starts the service, for a minute at most: one that says nothing must not keep the test waiting. */
    private static Process start(Map<String, String> settings) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx128m",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                "wayside.server.Main");
        builder.environment().keySet().removeIf(name -> name.startsWith("WAYSIDE_"));
        builder.environment().putAll(settings);
        Process process = builder.redirectErrorStream(true).start();
        CompletableFuture.delayedExecutor(60, TimeUnit.SECONDS).execute(process::destroy);
        return process;
    }

    private static int status(String address) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(address)).build(),
                        HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8))
                .statusCode();
    }
}
