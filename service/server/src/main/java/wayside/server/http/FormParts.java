package wayside.server.http;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.MultiPart;
import org.eclipse.jetty.io.Content;
import org.jspecify.annotations.Nullable;

/** Parts a form, RFC 7578, that lies whole in memory. */
final class FormParts extends MultiPart.AbstractPartsListener {
    private static final int MOST_PARTS = 10;

    private final Map<String, byte[]> parts = new HashMap<>();
    private final Set<String> doubled = new TreeSet<>();
    private final List<ByteBuffer> content = new ArrayList<>();
    private @Nullable Throwable failure;
    private boolean complete;

    private FormParts() {}

    /** @throws IllegalArgumentException for what is no form */
    static FormParts of(byte[] body, @Nullable String contentType) {
        String boundary = MultiPart.extractBoundary(contentType);
        if (boundary == null || boundary.isEmpty()) {
            throw new IllegalArgumentException("no boundary");
        }
        FormParts form = new FormParts();
        MultiPart.Parser parser = new MultiPart.Parser(boundary, form);
        parser.setMaxParts(MOST_PARTS);
        try {
            parser.parse(Content.Chunk.from(ByteBuffer.wrap(body), true));
        } catch (RuntimeException e) {
            throw new IllegalArgumentException("not parted by its boundary", e);
        }
        if (!form.complete || form.failure != null) {
            throw new IllegalArgumentException("not parted by its boundary", form.failure);
        }
        return form;
    }

    Set<String> names() {
        return parts.keySet();
    }

    /** Names that more than one part bears. */
    Set<String> doubled() {
        return doubled;
    }

    byte @Nullable [] find(String name) {
        return parts.get(name);
    }

    @Override
    public void onPartContent(Content.Chunk chunk) {
        content.add(chunk.getByteBuffer().slice());
    }

    @Override
    public void onPart(@Nullable String name, @Nullable String fileName, HttpFields headers) {
        String key = name == null ? "" : name;
        if (parts.put(key, joined()) != null) {
            doubled.add(key);
        }
        content.clear();
    }

    private byte[] joined() {
        byte[] whole = new byte[content.stream().mapToInt(ByteBuffer::remaining).sum()];
        int at = 0;
        for (ByteBuffer piece : content) {
            int length = piece.remaining();
            piece.get(whole, at, length);
            at += length;
        }
        return whole;
    }

    @Override
    public void onComplete() {
        complete = true;
    }

    @Override
    public void onFailure(Throwable cause) {
        failure = cause;
    }
}
