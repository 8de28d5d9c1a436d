package wayside.widget;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Somebody else's web server: files of a folder of the class path, at an origin of their own. */
final class PlainServer implements AutoCloseable {
    private final HttpServer server;
    private final Source source;

    /** Finds the bytes behind a path. */
    interface Source {
        Optional<InputStream> open(String path) throws IOException;
    }

    static PlainServer of(Source source) {
        return new PlainServer(source);
    }

    private PlainServer(Source source) {
        this.source = source;
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        server.createContext("/", this::answer);
        server.start();
    }

    /** Serves a folder of the class path. */
    static PlainServer ofResources(String folder) {
        return new PlainServer(path -> Optional.ofNullable(PlainServer.class.getResourceAsStream(folder + path)));
    }

    /** Serves a folder of the disk. */
    static PlainServer ofFolder(Path folder) {
        return new PlainServer(path -> {
            Path file = folder.resolve(path.substring(1)).normalize();
            return file.startsWith(folder) && Files.isRegularFile(file)
                    ? Optional.of(Files.newInputStream(file))
                    : Optional.empty();
        });
    }

    String origin() {
        return "http://localhost:" + server.getAddress().getPort();
    }

    private void answer(HttpExchange exchange) throws IOException {
        String asked = exchange.getRequestURI().getPath();
        String path = asked.endsWith("/") ? asked + "index.html" : asked;
        try (exchange) {
            Optional<InputStream> file = source.open(path);
            if (file.isEmpty()) {
                exchange.sendResponseHeaders(404, -1);
                return;
            }
            send(exchange, mediaType(path), file.get());
        }
    }

    private static void send(HttpExchange exchange, String mediaType, InputStream file) throws IOException {
        try (file) {
            byte[] bytes = file.readAllBytes();
            exchange.getResponseHeaders().set("Content-Type", mediaType);
            exchange.sendResponseHeaders(200, bytes.length);
            exchange.getResponseBody().write(bytes);
        }
    }

    private static String mediaType(String path) {
        String ending = path.substring(path.lastIndexOf('.') + 1);
        return switch (ending) {
            case "html" -> "text/html; charset=utf-8";
            case "js" -> "text/javascript; charset=utf-8";
            case "css" -> "text/css; charset=utf-8";
            default -> "application/octet-stream";
        };
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
