import java.nio.charset.StandardCharsets;
import java.util.List;

/** Bodies that want more memory than they are worth. */
final class MemoryAttacks {
    private static final int MOST = 262_144;
    private static final String BUDGET = "/v1/energy-budget";

    private MemoryAttacks() {}

    static List<Faults.Fault> all() {
        return List.of(
                Faults.Fault.of("json: lists of empty objects", s -> bodies(s, fill("{\"loads\":[{}", ",{}", "]}", MOST), 422)),
                Faults.Fault.of("json: unknown names", s -> bodies(s, names(MOST), 422)),
                Faults.Fault.of("json: names in lists in names", s -> bodies(s, fill("{\"x\":[{\"a\":1}", ",{\"b\":[1]}", "]}", MOST), 422)),
                Faults.Fault.of("json: a megabyte", s -> bodies(s, fill("{\"loads\":[{}", ",{}", "]}", 1 << 20), 413)),
                Faults.Fault.of("json: twenty megabytes", s -> bodies(s, fill("{\"loads\":[{}", ",{}", "]}", 20 << 20), 413)),
                Faults.Fault.of("json: nested for ever", s -> bodies(s, "[".repeat(MOST), 400)),
                Faults.Fault.of("json: a number of many digits", s -> bodies(s, "{\"loads\":1" + "0".repeat(200_000) + "}", 400)),
                Faults.Fault.of("json: one long text", s -> bodies(s, "{\"loads\":\"" + "x".repeat(200_000) + "\"}", 400)),
                Faults.Fault.of("uploads: 24 of three megabytes", s -> uploads(s, 24, 3 << 20, 422, 429, 503)),
                Faults.Fault.of("uploads: 12 of eight megabytes", s -> uploads(s, 12, 8 << 20, 413, 429, 503)),
                Faults.Fault.of("uploads: a form of many parts", MemoryAttacks::manyParts),
                Faults.Fault.of("gzip bomb", MemoryAttacks::gzip),
                Faults.Fault.of("large bodies promised", MemoryAttacks::promised));
    }

    private static String bodies(Service service, String body, int expected) throws Exception {
        byte[] request = Wire.json(BUDGET, body);
        return Crowd.only(
                Crowd.of(16, i -> Wire.once("127.0.1.1", service.port, request).status()), expected, 429, 503);
    }

    private static String uploads(Service service, int clients, int bytes, Integer... expected) throws Exception {
        byte[] request = form("x".repeat(bytes));
        return Crowd.only(Crowd.of(clients, i -> Wire.once("127.0.1.2", service.port, request).status()), expected);
    }

    static byte[] form(String file) {
        String body = "--b\r\nContent-Disposition: form-data; name=\"typicalYear\"; filename=\"y.epw\"\r\n\r\n" + file
                + "\r\n--b--\r\n";
        return Wire.post(
                "/v1/solar-yield",
                "Content-Type: multipart/form-data; boundary=b\r\n",
                body.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static String manyParts(Service service) throws Exception {
        String part = "--b\r\nContent-Disposition: form-data; name=\"request\"\r\n\r\n{}\r\n";
        byte[] request = Wire.post(
                "/v1/solar-yield",
                "Content-Type: multipart/form-data; boundary=b\r\n",
                (part.repeat(40_000) + "--b--\r\n").getBytes(StandardCharsets.ISO_8859_1));
        return Crowd.only(Crowd.of(8, i -> Wire.once("127.0.1.3", service.port, request).status()), 400, 429, 503);
    }

    /** A gigabyte of zeros, packed twice, would have about 4 kB: the coding is refused before the bytes matter. */
    private static String gzip(Service service) throws Exception {
        byte[] request = Wire.post(
                BUDGET, "Content-Type: application/json\r\nContent-Encoding: gzip\r\n", new byte[] {31, -117, 8, 0, 0, 0});
        return Crowd.only(Crowd.of(16, i -> Wire.once("127.0.1.4", service.port, request).status()), 415);
    }

    /** Memory goes to who sends, not to who promises. */
    private static String promised(Service service) throws Exception {
        return Crowd.of(300, i -> {
                    try (Wire wire = new Wire("127.0.1.5", service.port)) {
                        wire.send("POST " + BUDGET + " HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n"
                                + "Content-Length: 262000\r\n\r\n{");
                        Thread.sleep(1_500);
                        return 0;
                    }
                })
                .toString();
    }

    private static String names(int bytes) {
        StringBuilder text = new StringBuilder("{\"a\":1");
        for (int i = 0; text.length() < bytes - 20; i++) {
            text.append(",\"").append(i).append("\":1");
        }
        return text.append('}').toString();
    }

    private static String fill(String begin, String more, String end, int bytes) {
        return begin + more.repeat((bytes - begin.length() - end.length()) / more.length()) + end;
    }
}
