package wayside.server.mapping;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.io.NumberOutput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** JSON that grows at its end, and of which earlier parts may be said again. */
public final class JsonText extends OutputStream {
    private static final JsonFactory LIBRARY = new JsonFactory();

    private byte[] bytes;
    private int size;

    /** An empty text with room for so many bytes before it must grow. */
    public JsonText(int capacity) {
        bytes = new byte[capacity];
    }

    /** How many bytes it has. */
    public int size() {
        return size;
    }

    /** A copy of it. */
    public byte[] toBytes() {
        return Arrays.copyOf(bytes, size);
    }

    /** Hands it over as it stands and at one go: nobody need put it together again. */
    public void writeTo(OutputStream stream) throws IOException {
        stream.write(bytes, 0, size);
    }

    @Override
    public void write(int letter) {
        room(1);
        bytes[size++] = (byte) letter;
    }

    @Override
    public void write(byte[] from, int start, int length) {
        room(length);
        System.arraycopy(from, start, bytes, size, length);
        size += length;
    }

    /** What is JSON already. */
    void add(byte[] json) {
        write(json, 0, json.length);
    }

    /** What stands here from one place to another. */
    void again(int from, int to) {
        write(bytes, from, to - from);
    }

    /** A string with its quotes. Whatever is not plain is left to the library. */
    void string(String text) {
        int length = text.length();
        room(length + 2);
        byte[] out = bytes;
        int start = size + 1;
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            if (c < ' ' || c > '~' || c == '"' || c == '\\') {
                add(quoted(text));
                return;
            }
            out[start + i] = (byte) c;
        }
        out[size] = '"';
        out[start + length] = '"';
        size = start + length + 1;
    }

    /** The shortest digits that give the number back. */
    void number(double value) {
        add(NumberOutput.toString(value, true).getBytes(StandardCharsets.US_ASCII));
    }

    private static byte[] quoted(String text) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonGenerator generator = LIBRARY.createGenerator(out)) {
            generator.writeString(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private void room(int more) {
        if (bytes.length - size < more) {
            bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, size + more));
        }
    }
}
