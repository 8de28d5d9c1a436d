import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Bytes on a socket, from an address of one's own of this machine: the service shares itself out by address. */
final class Wire implements AutoCloseable {
    /**
     * An answer.
     *
     * @param status 0 when the connection ended without one
     */
    record Answer(int status, String head, byte[] body) {
        static final Answer NONE = new Answer(0, "", new byte[0]);

        String text() {
            return new String(body, StandardCharsets.UTF_8);
        }

        /** A header field, empty when there is none. */
        String field(String name) {
            for (String line : head.split("\r\n")) {
                if (line.toLowerCase(Locale.ROOT).startsWith(name.toLowerCase(Locale.ROOT) + ":")) {
                    return line.substring(name.length() + 1).strip();
                }
            }
            return "";
        }
    }

    final Socket socket;

    Wire(String from, int port) throws IOException {
        this(from, port, 0);
    }

    Wire(String from, int port, int receiveBufferBytes) throws IOException {
        socket = new Socket();
        if (receiveBufferBytes > 0) {
            socket.setReceiveBufferSize(receiveBufferBytes);
        }
        socket.bind(new InetSocketAddress(InetAddress.getByName(from), 0));
        socket.setSoTimeout(60_000);
        socket.connect(new InetSocketAddress("127.0.0.1", port), 20_000);
    }

    void send(byte[] bytes) throws IOException {
        socket.getOutputStream().write(bytes);
        socket.getOutputStream().flush();
    }

    void send(String text) throws IOException {
        send(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    /** The next answer on this connection. */
    Answer answer() throws IOException {
        InputStream in = socket.getInputStream();
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        int end = 0;
        while (end < 4) {
            int b = in.read();
            if (b < 0) {
                return Answer.NONE;
            }
            head.write(b);
            end = b == (end % 2 == 0 ? '\r' : '\n') ? end + 1 : (b == '\r' ? 1 : 0);
        }
        String text = head.toString(StandardCharsets.ISO_8859_1);
        int status = Integer.parseInt(text.substring(9, 12));
        if (status == 100) {
            return answer();
        }
        String length = new Answer(status, text, new byte[0]).field("Content-Length");
        byte[] body = length.isEmpty() ? new byte[0] : in.readNBytes(Integer.parseInt(length));
        return new Answer(status, text, body);
    }

    Answer ask(byte[] request) throws IOException {
        send(request);
        return answer();
    }

    /** One request on a connection of its own; what goes wrong on the way counts as no answer. */
    static Answer once(String from, int port, byte[] request) {
        try (Wire wire = new Wire(from, port)) {
            try {
                wire.send(request);
            } catch (IOException e) {
                // The service may answer before it has read all.
                return wire.answer();
            }
            return wire.answer();
        } catch (IOException e) {
            return Answer.NONE;
        }
    }

    static byte[] get(String path) {
        return ("GET " + path + " HTTP/1.1\r\nHost: x\r\n\r\n").getBytes(StandardCharsets.ISO_8859_1);
    }

    static byte[] post(String path, String fields, byte[] body) {
        byte[] head = ("POST " + path + " HTTP/1.1\r\nHost: x\r\n" + fields + "Content-Length: " + body.length + "\r\n\r\n")
                .getBytes(StandardCharsets.ISO_8859_1);
        byte[] whole = new byte[head.length + body.length];
        System.arraycopy(head, 0, whole, 0, head.length);
        System.arraycopy(body, 0, whole, head.length, body.length);
        return whole;
    }

    static byte[] json(String path, String body) {
        return post(path, "Content-Type: application/json\r\n", body.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
