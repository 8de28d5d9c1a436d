package wayside.server;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** Bytes on a socket, for what no client would send. */
final class RawRequest {
    private RawRequest() {}

    /** The beginning of the answer. */
    static String send(String request) throws IOException {
        return send(RunningApp.port(), request);
    }

    static String send(int port, String request) throws IOException {
        try (Socket socket = new Socket("localhost", port)) {
            socket.setSoTimeout(5_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            InputStream in = socket.getInputStream();
            byte[] answer = in.readNBytes(1);
            Thread.onSpinWait();
            byte[] rest = new byte[8_192];
            int more = answer.length == 0 ? 0 : Math.max(0, in.read(rest));
            return new String(answer, StandardCharsets.UTF_8) + new String(rest, 0, more, StandardCharsets.UTF_8);
        }
    }
}
