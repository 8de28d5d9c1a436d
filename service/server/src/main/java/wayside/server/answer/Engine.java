package wayside.server.answer;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Properties;

/** Which engine runs, as it was written down when the project was built. */
public final class Engine {
    private static final String FILE = "/wayside/server/contract/engine.properties";

    public static final EngineView VIEW = read();

    private Engine() {}

    private static EngineView read() {
        Properties built = new Properties();
        try (InputStream stream = Engine.class.getResourceAsStream(FILE)) {
            if (stream == null) {
                throw new IllegalStateException("The build writes " + FILE);
            }
            built.load(stream);
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read " + FILE, e);
        }
        return new EngineView(
                Objects.requireNonNull(built.getProperty("version")),
                Objects.requireNonNull(built.getProperty("tables")));
    }
}
