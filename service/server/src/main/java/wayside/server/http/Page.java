package wayside.server.http;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;

/** A file of the jar, ready to send. */
final class Page {
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

    private final byte[] bytes;
    private final String type;
    private final String tag;

    private Page(byte[] bytes, String type, String tag) {
        this.bytes = bytes;
        this.type = type;
        this.tag = tag;
    }

    /** Not copied: nobody writes to it. */
    byte[] bytes() {
        return bytes;
    }

    String type() {
        return type;
    }

    /** Strong entity tag of the bytes. */
    String tag() {
        return tag;
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
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return new Page(bytes, type, '"' + HexFormat.of().formatHex(digest, 0, 8) + '"');
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
