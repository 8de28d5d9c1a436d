package wayside.server.binding;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Words that people write for names and codes of the contract. Common practice, no source. */
final class Synonyms {
    private static final int SHORTEST_START = 3;

    private static final Map<String, List<String>> FIELDS = Map.ofEntries(
            Map.entry("lat", List.of("latitude")),
            Map.entry("lng", List.of("longitude")),
            Map.entry("lon", List.of("longitude")),
            Map.entry("altitude", List.of("elevationM")),
            Map.entry("height", List.of("elevationM")),
            Map.entry("hours", List.of("hoursPerDay")),
            Map.entry("hrs", List.of("hoursPerDay")),
            Map.entry("watt", List.of("powerW")),
            Map.entry("watts", List.of("powerW")),
            Map.entry("wattage", List.of("powerW")),
            Map.entry("amp", List.of("currentA")),
            Map.entry("amps", List.of("currentA")),
            Map.entry("amperage", List.of("currentA")),
            Map.entry("volt", List.of("voltageV", "busVoltageV")),
            Map.entry("volts", List.of("voltageV", "busVoltageV")),
            Map.entry("count", List.of("quantity")),
            Map.entry("qty", List.of("quantity")),
            Map.entry("number", List.of("quantity")),
            Map.entry("label", List.of("name")),
            Map.entry("title", List.of("name")));

    /** Names without their unit, which they keep. */
    private static final Map<String, String> STEMS = Map.of(
            "panel", "solarpower",
            "panels", "solarpower",
            "array", "solarpower",
            "solar", "solarpower",
            "pv", "solarpower",
            "capacity", "nominalenergy",
            "nominalcapacity", "nominalenergy",
            "battery", "nominalenergy",
            "altitude", "elevation",
            "height", "elevation");

    private static final Map<String, List<String>> CODES = Map.ofEntries(
            Map.entry("lfp", List.of("lifepo4", "lifepo", "lithium", "lithiumironphosphate")),
            Map.entry("nmc", List.of("linmc", "nickelmanganesecobalt")),
            Map.entry("flooded", List.of("wet", "wetcell")),
            Map.entry("ac", List.of("mains", "inverter", "230v", "220v", "240v", "110v", "115v", "120v")),
            Map.entry("dc", List.of("battery", "12v", "24v", "48v")),
            Map.entry("mass", List.of("weight", "lightest")),
            Map.entry("price", List.of("cost", "money", "cheapest")),
            Map.entry("volume", List.of("size", "space", "smallest")),
            Map.entry("solar", List.of("sun", "pv", "panel", "panels")),
            Map.entry("alternator", List.of("engine", "driving")),
            Map.entry("shore", List.of("hookup", "grid", "mains")),
            Map.entry("abyc-e11", List.of("abyc", "e11")));

    private Synonyms() {}

    /** The field that goes by that word, or alone begins with it. */
    static Optional<String> field(String word, Collection<String> known) {
        Optional<String> named = fields(word).filter(known::contains).findFirst();
        return named.isPresent() ? named : onlyOneThatBegins(plain(word), known);
    }

    /** Every field that goes by that word. */
    static Stream<String> fields(String word) {
        return FIELDS.getOrDefault(plain(word), List.of()).stream();
    }

    /** The code that the word stands for, or that alone begins with it, in letters of any size. */
    static Optional<String> code(String word, Collection<String> known) {
        String plain = plain(word);
        Optional<String> same =
                known.stream().filter(code -> plain(code).equals(plain)).findFirst();
        Optional<String> named = same.isPresent()
                ? same
                : known.stream()
                        .filter(code -> CODES.getOrDefault(code, List.of()).contains(plain))
                        .findFirst();
        return named.isPresent() ? named : onlyOneThatBegins(plain, known);
    }

    /** What a name without its unit is called here; the same where it has no other name. */
    static String stem(String stem) {
        return STEMS.getOrDefault(stem, stem);
    }

    private static Optional<String> onlyOneThatBegins(String plain, Collection<String> known) {
        if (plain.length() < SHORTEST_START) {
            return Optional.empty();
        }
        List<String> begun =
                known.stream().filter(name -> plain(name).startsWith(plain)).toList();
        return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
    }

    /** Small letters and digits only. By hand: a request may hold a hundred unknown names. */
    private static String plain(String word) {
        StringBuilder plain = new StringBuilder(word.length());
        for (char letter : word.toLowerCase(Locale.ROOT).toCharArray()) {
            if ((letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9')) {
                plain.append(letter);
            }
        }
        return plain.toString();
    }
}
