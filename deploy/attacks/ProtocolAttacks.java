import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** What is no good HTTP, or too much of it. */
final class ProtocolAttacks {
    private static final String POST = "POST /v1/energy-budget HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n";

    private ProtocolAttacks() {}

    static List<Faults.Fault> all() {
        return List.of(
                Faults.Fault.of("smuggling: two lengths", s -> refused(s, POST + "Content-Length: 2\r\nContent-Length: 3\r\n\r\n{}")),
                Faults.Fault.of("smuggling: length and chunks", s -> refused(
                        s, POST + "Content-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n")),
                Faults.Fault.of("smuggling: a coding before chunked", s -> refused(
                        s, POST + "Transfer-Encoding: gzip, chunked\r\n\r\n0\r\n\r\n")),
                Faults.Fault.of("smuggling: bare line feeds", s -> refused(s, "GET /health/live HTTP/1.1\nHost: x\n\n")),
                Faults.Fault.of("smuggling: a bad chunk", s -> refused(
                        s, POST + "Transfer-Encoding: chunked\r\n\r\n2;\n{}\r\n0\r\n\r\n")),
                Faults.Fault.of("headers: too many", s -> refused(s, "GET / HTTP/1.1\r\nHost: x\r\n" + "X: y\r\n".repeat(9_000) + "\r\n")),
                Faults.Fault.of("headers: one too long", s -> refused(s, "GET / HTTP/1.1\r\nHost: x\r\nX: " + "y".repeat(60_000) + "\r\n\r\n")),
                Faults.Fault.of("address: too long", s -> refused(s, "GET /" + "x".repeat(60_000) + " HTTP/1.1\r\nHost: x\r\n\r\n")),
                Faults.Fault.of("bytes of another protocol", ProtocolAttacks::noise),
                Faults.Fault.of("pipeline of 200", ProtocolAttacks::pipeline),
                Faults.Fault.of("connections: 2000 one after another", ProtocolAttacks::churn),
                Faults.Fault.of("connections: reset in a body", ProtocolAttacks::reset),
                Faults.Fault.of("expectation of a hundred megabytes", s -> refused(
                        s, POST + "Expect: 100-continue\r\nContent-Length: 100000000\r\n\r\n")));
    }

    /** Sixteen at once are all told that it is their mistake. */
    private static String refused(Service service, String request) throws Exception {
        byte[] bytes = request.getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
        var met = Crowd.of(16, i -> Wire.once("127.0.4.1", service.port, bytes).status());
        if (met.keySet().stream().anyMatch(status -> status < 400 || status > 499)) {
            throw new IllegalStateException("answered " + met);
        }
        return met.toString();
    }

    private static String noise(Service service) throws Exception {
        var met = Crowd.of(32, i -> {
            byte[] bytes = new byte[4096];
            new Random(i).nextBytes(bytes);
            return Wire.once("127.0.4.2", service.port, bytes).status();
        });
        if (met.keySet().stream().anyMatch(status -> status >= 500 && status != 505)) {
            throw new IllegalStateException("answered " + met);
        }
        return met.toString();
    }

    private static String pipeline(Service service) throws Exception {
        try (Wire wire = new Wire("127.0.4.3", service.port)) {
            byte[] one = Wire.json("/v1/energy-budget", "{\"loads\":[{\"name\":\"fan\",\"powerW\":20,\"hoursPerDay\":5}]}");
            for (int i = 0; i < 200; i++) {
                wire.send(one);
            }
            for (int i = 0; i < 200; i++) {
                int status = wire.answer().status();
                if (status != 200) {
                    throw new IllegalStateException("number " + i + " got " + status);
                }
            }
        }
        return "200 answered in order";
    }

    private static String churn(Service service) throws Exception {
        for (int i = 0; i < 2_000; i++) {
            new Wire("127.0.4." + (10 + i % 20), service.port).close();
        }
        return "2000 opened and closed";
    }

    private static String reset(Service service) throws Exception {
        List<Wire> wires = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            Wire wire = new Wire("127.0.4.4", service.port);
            wire.send(POST + "Content-Length: 1000\r\n\r\n{\"loads\":");
            wire.socket.setSoLinger(true, 0);
            wires.add(wire);
        }
        for (Wire wire : wires) {
            wire.close();
        }
        return "200 reset";
    }
}
