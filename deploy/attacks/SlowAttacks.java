import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Clients that send or take too slowly, or not at all. */
final class SlowAttacks {
    private SlowAttacks() {}

    static List<Faults.Fault> all() {
        return List.of(
                Faults.Fault.of("slow: bodies, after much traffic", s -> drip(s, "Content-Type: application/json\r\n")),
                Faults.Fault.of("slow: forms", s -> drip(s, "Content-Type: multipart/form-data; boundary=b\r\n")),
                Faults.Fault.of("slow: headers", SlowAttacks::headers),
                Faults.Fault.of("slow: answers not taken", SlowAttacks::unread),
                Faults.Fault.of("idle: 1000 connections", s -> idle(s, 1_000)),
                Faults.Fault.of("idle: 5000 connections", s -> idle(s, 5_000)).onlyLong(),
                Faults.Fault.of("idle: bodies that never come", SlowAttacks::never));
    }

    /** 80 clients, 700 bytes a second each, after twenty megabytes of others. */
    private static String drip(Service service, String type) throws Exception {
        byte[] traffic = Wire.json("/v1/energy-budget", " ".repeat(250_000));
        for (int i = 0; i < 80; i++) {
            Wire.once("127.0.2.1", service.port, traffic);
        }
        long begun = System.nanoTime();
        String met = Crowd.only(
                Crowd.of(80, i -> {
                    try (Wire wire = new Wire("127.0.2.2", service.port)) {
                        wire.send("POST /v1/solar-yield HTTP/1.1\r\nHost: x\r\n" + type + "Content-Length: 200000\r\n\r\n");
                        Thread feeder = new Thread(() -> feed(wire));
                        feeder.start();
                        return wire.answer().status();
                    }
                }),
                408,
                429,
                503);
        long seconds = (System.nanoTime() - begun) / 1_000_000_000;
        if (seconds > 20) {
            throw new IllegalStateException("slow clients were borne with for " + seconds + " s: " + met);
        }
        return met;
    }

    private static void feed(Wire wire) {
        try {
            for (int i = 0; i < 300; i++) {
                wire.send(" ".repeat(70));
                Thread.sleep(100);
            }
        } catch (IOException | InterruptedException e) {
            // The service has had enough.
        }
    }

    private static String headers(Service service) throws Exception {
        return Crowd.of(300, i -> {
                    try (Wire wire = new Wire("127.0.2.3", service.port)) {
                        wire.send("GET /health/live HTTP/1.1\r\nHost: x\r\n");
                        for (int line = 0; line < 15; line++) {
                            wire.send("X-" + line + ": x\r\n");
                            Thread.sleep(100);
                        }
                        return 0;
                    }
                })
                .toString();
    }

    /** Large answers that nobody reads. */
    private static String unread(Service service) throws Exception {
        byte[] request = Wire.json("/v1/circuits", circuits());
        List<Wire> wires = new ArrayList<>();
        try {
            for (int i = 0; i < 80; i++) {
                Wire wire = new Wire("127.0.2.4", service.port, 4096);
                wires.add(wire);
                wire.send(request);
            }
            Thread.sleep(6_000);
        } finally {
            for (Wire wire : wires) {
                wire.close();
            }
        }
        return "80 left alone for 6 s";
    }

    static String circuits() {
        StringBuilder text = new StringBuilder("{\"circuits\":[");
        for (int i = 0; i < 200; i++) {
            text.append(i == 0 ? "" : ",")
                    .append("{\"name\":\"c" + i + "\",\"currentA\":20,\"lengthM\":3,\"voltageV\":12}");
        }
        return text.append("]}").toString();
    }

    private static String idle(Service service, int connections) throws Exception {
        List<Wire> wires = new ArrayList<>();
        try {
            for (int i = 0; i < connections; i++) {
                wires.add(new Wire("127.0.2." + (10 + i % 40), service.port));
            }
            Thread.sleep(1_500);
        } finally {
            for (Wire wire : wires) {
                wire.close();
            }
        }
        return connections + " held for 1.5 s";
    }

    private static String never(Service service) throws Exception {
        return Crowd.only(
                Crowd.of(100, i -> {
                    try (Wire wire = new Wire("127.0.2.5", service.port)) {
                        wire.send("POST /v1/circuits HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n"
                                + "Content-Length: 100\r\n\r\n{");
                        return wire.answer().status();
                    }
                }),
                408);
    }
}
