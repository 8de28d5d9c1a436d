import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Requests made of the contract's examples, mostly broken: no answer is a 5xx but an honest 503. */
final class JunkAttacks {
    private static final int CLIENTS = 4;
    private static final Pattern VALUE = Pattern.compile("(?<=: )(-?[0-9.]+|\"[^\"]*\"|true|false)");
    private static final List<String> VALUES = List.of(
            "null", "true", "0", "-0.0", "-1", "0.5", "1e308", "1e999", "1e-320", "123456789012345678901234567890", "\"\"",
            "\"lfp\"", "\"22:00\"", "\"\\u0000\"", "\"é𝄞\"", "[]", "{}", "[[]]", "[null]", "{\"a\":{}}", "NaN", "12", "48");

    private JunkAttacks() {}

    static List<Faults.Fault> all() {
        return List.of(
                Faults.Fault.of("junk: 2000 requests", s -> junk(s, 2_000)),
                Faults.Fault.of("junk: 100000 requests", s -> junk(s, 100_000)).onlyLong());
    }

    private static String junk(Service service, int requests) throws Exception {
        Map<Integer, Integer> all = new TreeMap<>();
        List<Path> examples = examples();
        Crowd.of(CLIENTS, client -> {
            Random random = new Random(client);
            Wire wire = new Wire("127.0.5." + (1 + client), service.port);
            for (int i = 0; i < requests / CLIENTS; i++) {
                Wire.Answer answer;
                try {
                    answer = wire.ask(request(examples.get(random.nextInt(examples.size())), random));
                } catch (IOException e) {
                    answer = Wire.Answer.NONE;
                }
                synchronized (all) {
                    all.merge(answer.status(), 1, Integer::sum);
                }
                if (answer.status() == 0 || answer.field("Connection").equals("close")) {
                    wire.close();
                    wire = new Wire("127.0.5." + (1 + client), service.port);
                }
            }
            wire.close();
            return 0;
        });
        if (all.keySet().stream().anyMatch(status -> status == 0 || (status >= 500 && status != 503))) {
            throw new IllegalStateException("answered " + all);
        }
        return all.toString();
    }

    private static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("examples")))) {
            return files.filter(file -> file.toString().endsWith(".request.json")).sorted().toList();
        }
    }

    private static byte[] request(Path example, Random random) throws IOException {
        String path = "/v1/" + example.getFileName().toString().split("\\.")[0];
        String good = Files.readString(example);
        byte[] body = random.nextInt(3) == 0
                ? damaged(good.getBytes(StandardCharsets.UTF_8), random)
                : spoiled(good, random).getBytes(StandardCharsets.UTF_8);
        String type = random.nextInt(20) == 0 ? "text/plain" : "application/json";
        return Wire.post(path, "Content-Type: " + type + "\r\nPrefer: return=minimal\r\n", body);
    }

    /** One to three values are put in the place of others. */
    private static String spoiled(String good, Random random) {
        String text = good;
        for (int i = random.nextInt(3); i >= 0; i--) {
            List<int[]> places = VALUE.matcher(text).results().map(r -> new int[] {r.start(), r.end()}).toList();
            if (!places.isEmpty()) {
                int[] place = places.get(random.nextInt(places.size()));
                text = text.substring(0, place[0]) + VALUES.get(random.nextInt(VALUES.size())) + text.substring(place[1]);
            }
        }
        return text;
    }

    private static byte[] damaged(byte[] good, Random random) {
        byte[] bytes = good.clone();
        for (int i = random.nextInt(4); i >= 0; i--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return random.nextBoolean() ? bytes : java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length));
    }
}
