package wayside.widget;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.function.Function;

/** Stands before the real service and answers in its place as it is told to: busy, broken, a sign-in page, not at all. */
final class OddServer implements AutoCloseable {
    private static final String CARD = "/card/";
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private final HttpServer server;
    private volatile Function<String, Optional<Odd>> rule = path -> Optional.empty();

    /** An answer that is not the service's. Status 0 hangs up without a word. */
    record Odd(int status, String mediaType, String body, Map<String, String> headers) {
        static Odd status(int status) {
            return new Odd(status, "text/html", "<h1>" + status + "</h1>", Map.of());
        }

        static Odd busy(int status, int retryAfterSeconds) {
            return new Odd(
                    status,
                    "application/problem+json",
                    "{\"title\":\"Too busy\",\"status\":" + status + "}",
                    Map.of("Retry-After", Integer.toString(retryAfterSeconds)));
        }

        static Odd ok(String mediaType, String body) {
            return new Odd(200, mediaType, body, Map.of());
        }
    }

    OddServer() {
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        server.setExecutor(Executors.newCachedThreadPool(task -> {
            Thread thread = new Thread(task);
            thread.setDaemon(true);
            return thread;
        }));
        server.createContext("/", this::answer);
        server.start();
    }

    /** Address of a page with a card that asks here. */
    String card(String starter) {
        return "http://localhost:" + server.getAddress().getPort() + CARD + starter.replace(' ', '-');
    }

    /** Every question gets this answer. */
    OddServer always(Odd odd) {
        rule = path -> Optional.of(odd);
        return this;
    }

    /** One operation gets this answer, the others the service's. */
    OddServer only(String operation, Odd odd) {
        rule = path -> path.equals("/v1/" + operation) ? Optional.of(odd) : Optional.empty();
        return this;
    }

    /** The service answers from now on. */
    void recover() {
        rule = path -> Optional.empty();
    }

    private void answer(HttpExchange exchange) throws IOException {
        byte[] asked = exchange.getRequestBody().readAllBytes();
        String path = exchange.getRequestURI().getPath();
        Optional<Odd> odd = path.startsWith("/v1/") ? rule.apply(path) : Optional.empty();
        if (path.startsWith(CARD)) {
            send(
                    exchange,
                    Odd.ok(
                            "text/html; charset=utf-8",
                            Sheet.pageWith(path.substring(CARD.length()).replace('-', ' '))));
        } else if (odd.isPresent()) {
            send(exchange, odd.get());
        } else {
            pass(exchange, asked);
        }
    }

    private static void send(HttpExchange exchange, Odd odd) throws IOException {
        if (odd.status() == 0) {
            exchange.close();
            return;
        }
        odd.headers().forEach(exchange.getResponseHeaders()::set);
        write(exchange, odd.status(), odd.mediaType(), odd.body().getBytes(StandardCharsets.UTF_8));
    }

    private static void pass(HttpExchange exchange, byte[] asked) throws IOException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(Wayside.origin() + exchange.getRequestURI()))
                .header("Content-Type", "application/json")
                .method(exchange.getRequestMethod(), HttpRequest.BodyPublishers.ofByteArray(asked))
                .build();
        try {
            HttpResponse<byte[]> response = CLIENT.send(request, HttpResponse.BodyHandlers.ofByteArray());
            write(
                    exchange,
                    response.statusCode(),
                    response.headers().firstValue("Content-Type").orElse("application/json"),
                    response.body());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void write(HttpExchange exchange, int status, String mediaType, byte[] body) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", mediaType);
        exchange.sendResponseHeaders(status, body.length);
        try (OutputStream out = exchange.getResponseBody()) {
            out.write(body);
        }
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
