package wayside.server.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What does not change while the service runs, ready to send: a file of the jar, or a table. */
final class Page {
    private static final String GZIP = "gzip";
    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "json", "application/json",
            "yaml", "application/yaml",
            "svg", "image/svg+xml",
            "png", "image/png",
            "ico", "image/x-icon",
            "txt", "text/plain; charset=utf-8");

    private final String type;
    private final Representation plain;
    private final @Nullable Representation gzipped;

    private Page(byte[] bytes, String type) {
        this.type = type;
        this.plain = Representation.of(bytes);
        Representation packed = Representation.gzipped(bytes);
        // A picture hardly shrinks.
        this.gzipped = packed.bytes().length < 0.9 * bytes.length ? packed : null;
    }

    /** A file by its absolute path in the jar. */
    static Optional<Page> find(String path) {
        String type = TYPES.get(path.substring(path.lastIndexOf('.') + 1));
        if (type == null) {
            return Optional.empty();
        }
        try (InputStream stream = Page.class.getResourceAsStream(path)) {
            return stream == null ? Optional.empty() : Optional.of(of(stream.readAllBytes(), type));
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read " + path, e);
        }
    }

    static Page of(byte[] bytes, String type) {
        return new Page(bytes, type);
    }

    /** Sends it in a coding that the client takes, or 304 when the client has it. */
    void send(Context context, String cacheControl) {
        Representation sent = inCodingOf(context.header("Accept-Encoding"));
        context.header("ETag", sent.tag()).header("Cache-Control", cacheControl);
        // Of a 304 and of HEAD too it is the length of what GET would send (RFC 9110 section 8.6).
        context.res().setContentLength(sent.bytes().length);
        if (sent.isHeld(Collections.list(context.req().getHeaders("If-None-Match")))) {
            // Without a type: a wrong one beside nosniff makes a browser refuse the script that it holds.
            context.status(304);
            return;
        }
        if (sent != plain) {
            context.header("Content-Encoding", GZIP);
        }
        // The server must not pack what bears the tag of the plain bytes.
        context.minSizeForCompression(Integer.MAX_VALUE).contentType(type).result(sent.bytes());
    }

    private Representation inCodingOf(@Nullable String accepted) {
        return gzipped != null && Accepts.takesCoding(accepted, GZIP) ? gzipped : plain;
    }
}
