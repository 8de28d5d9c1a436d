package wayside.server;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Spoils a good request in places, or makes nonsense out of nothing; the same for the same seed. */
final class Junk {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final List<String> VALUES = List.of(
            "null",
            "true",
            "false",
            "0",
            "-0.0",
            "1",
            "-1",
            "2",
            "0.5",
            "1.5",
            "24",
            "24.0001",
            "1e308",
            "-1e308",
            "1e999",
            "1e-320",
            "123456789012345678901234567890",
            "\"\"",
            "\"x\"",
            "\"dc\"",
            "\"lfp\"",
            "\"12\"",
            "\"22:00\"",
            "\"24:00\"",
            "\"\\u0000\"",
            "\"é𝄞\"",
            "[]",
            "{}",
            "[[]]",
            "[null]",
            "{\"a\":{}}",
            "12",
            "48");

    private final Random random;

    Junk(long seed) {
        random = new Random(seed);
    }

    /** A request with one to three changes. */
    String spoiled(String request) {
        try {
            JsonNode tree = MAPPER.readTree(request);
            int changes = 1 + random.nextInt(3);
            for (int i = 0; i < changes; i++) {
                change(tree);
            }
            return tree.toString();
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Bytes of a request cut, doubled or overwritten. */
    byte[] damaged(String request) {
        byte[] bytes = request.getBytes(java.nio.charset.StandardCharsets.UTF_8);
        int changes = 1 + random.nextInt(4);
        for (int i = 0; i < changes; i++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return random.nextBoolean() ? bytes : java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length));
    }

    private void change(JsonNode tree) throws JsonProcessingException {
        List<JsonNode> containers = new ArrayList<>();
        collect(tree, containers);
        JsonNode container = containers.get(random.nextInt(containers.size()));
        if (container instanceof ObjectNode object) {
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            String name = names.isEmpty() || random.nextInt(8) == 0 ? "junk" : names.get(random.nextInt(names.size()));
            if (random.nextInt(5) == 0) {
                object.remove(name);
            } else {
                object.set(name, value());
            }
        } else if (container instanceof ArrayNode array && !array.isEmpty()) {
            int index = random.nextInt(array.size());
            switch (random.nextInt(3)) {
                case 0 -> array.remove(index);
                case 1 -> array.set(index, value());
                default -> array.insert(index, array.get(index).deepCopy());
            }
        }
    }

    private JsonNode value() throws JsonProcessingException {
        return MAPPER.readTree(VALUES.get(random.nextInt(VALUES.size())));
    }

    private static void collect(JsonNode node, List<JsonNode> containers) {
        if (node.isContainerNode()) {
            containers.add(node);
            node.forEach(child -> collect(child, containers));
        }
    }
}
