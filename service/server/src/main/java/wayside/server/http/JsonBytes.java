package wayside.server.http;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

/** An answer while it is written, sent from where it stands. */
final class JsonBytes extends ByteArrayOutputStream {
    private static final int USUAL_BYTES = 16 * 1024;

    JsonBytes() {
        super(USUAL_BYTES);
    }

    /** At one go: a server that is handed the whole of it need not put it together again. */
    void sendTo(Context context) throws IOException {
        context.outputStream().write(buf, 0, count);
    }
}
