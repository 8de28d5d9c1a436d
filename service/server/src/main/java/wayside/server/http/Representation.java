package wayside.server.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.GZIPOutputStream;

/** The bytes of a page in one content coding. */
final class Representation {
    private final byte[] bytes;
    private final String tag;

    private Representation(byte[] bytes) {
        this.bytes = bytes;
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            this.tag = '"' + HexFormat.of().formatHex(digest, 0, 8) + '"';
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    static Representation of(byte[] bytes) {
        return new Representation(bytes);
    }

    static Representation gzipped(byte[] bytes) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream(bytes.length / 2 + 64);
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("Writing to memory does not fail", e);
        }
        return new Representation(packed.toByteArray());
    }

    /** Not copied: nobody writes to it. */
    byte[] bytes() {
        return bytes;
    }

    /** Strong entity tag of just these bytes: another coding of the page has another (RFC 9110 section 8.8.3.3). */
    String tag() {
        return tag;
    }

    /** Whether a client that sent these {@code If-None-Match} fields has it (RFC 9110 section 13.1.2). */
    boolean isHeld(List<String> ifNoneMatch) {
        return ifNoneMatch.stream()
                .anyMatch(tags -> tags.contains(tag) || tags.strip().equals("*"));
    }
}
