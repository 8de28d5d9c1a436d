package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slf4j.LoggerFactory;

/** The log holds operation, status and duration, and nothing of what a client sent. */
class LogTest {
    private static final String SECRET = "hunter2";
    private static final Logger ROOT = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);

    private final ListAppender<ILoggingEvent> log = new ListAppender<>();

    @BeforeEach
    void listen() {
        RunningApp.port();
        log.start();
        ROOT.addAppender(log);
    }

    @AfterEach
    void stopListening() {
        ROOT.detachAppender(log);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GET / HTTP/1.1\r\nHost: password=hunter2 x\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: hunter2:99999999\r\n\r\n",
                "GET http://hunter2^/ HTTP/1.1\r\nHost: x\r\n\r\n",
                "GET /hunter2%zz HTTP/1.1\r\nHost: x\r\n\r\n",
                "GET /..;/hunter2 HTTP/1.1\r\nHost: x\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: x\r\nhunter2\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: x\r\nX-hunter2[]: hunter2\u0001\r\n\r\n",
                "GET /?hunter2=hunter2 HUNTER2\r\n\r\n",
                "HUNTER2 /hunter2 HTTP/1.1\r\nHost: hunter2\r\nConnection: close\r\n\r\n",
                "POST /v1/energy-budget HTTP/1.1\r\nHost: x\r\nContent-Length: hunter2\r\n\r\n",
                "POST /v1/energy-budget HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: hunter2\r\n\r\n",
                "POST /v1/energy-budget HTTP/1.1\r\nHost: x\r\nContent-Type: hunter2\r\nContent-Length: 0\r\n\r\n",
            })
    void keepsNothingOfWhatWasSent(String request) throws IOException {
        assertThat(RawRequest.send(request)).startsWith("HTTP/1.1 ");
        assertThat(lines()).noneMatch(line -> line.toLowerCase(Locale.ROOT).contains(SECRET));
    }

    /** So that the test above does not pass for want of a log. */
    @Test
    void hasALineForARequest() throws IOException {
        RawRequest.send("GET /health/live HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");
        assertThat(lines()).anyMatch(line -> line.startsWith("operation=health method=GET status=200"));
    }

    private List<String> lines() {
        return List.copyOf(log.list).stream()
                .map(ILoggingEvent::getFormattedMessage)
                .toList();
    }
}
