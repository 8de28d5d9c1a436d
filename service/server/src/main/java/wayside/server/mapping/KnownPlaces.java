package wayside.server.mapping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** Where in a request each name is known, and so what an unknown one may be. Read off the records once. */
final class KnownPlaces {
    private static final Map<Class<?>, KnownPlaces> KNOWN = new ConcurrentHashMap<>();

    private final Map<String, List<List<String>>> recordsByName = new HashMap<>();

    private KnownPlaces(Class<?> root) {
        collect(RecordShape.of(root), List.of());
    }

    static KnownPlaces of(Class<?> root) {
        return KNOWN.computeIfAbsent(root, KnownPlaces::new);
    }

    /**
     * What an unknown name in a record was meant to be: a field of the record in other letters, the very name in a record
     * around or within it, a name like it in the record, the very name anywhere.
     */
    Suggestion suggestion(String name, String record, RecordShape shape) {
        boolean inOtherLetters =
                shape.fields().keySet().stream().anyMatch(known -> plain(known).equals(plain(name)));
        Optional<String> inLine = inOtherLetters ? Optional.empty() : find(name, record, true);
        if (inLine.isPresent()) {
            return Suggestion.elsewhere(inLine.get());
        }
        Suggestion here = NearestName.of(name, shape.fields());
        if (here.meant() != null) {
            return here;
        }
        return Stream.concat(Stream.of(name), Synonyms.fields(name))
                .flatMap(word -> find(word, record, false).stream())
                .findFirst()
                .map(Suggestion::elsewhere)
                .orElse(here);
    }

    private Optional<String> find(String name, String record, boolean inLine) {
        List<String> from = segments(record);
        return recordsByName.getOrDefault(plain(name), List.of()).stream()
                .map(place -> place.subList(0, place.size() - 1))
                .filter(place -> !inLine || common(place, from) == Math.min(place.size(), from.size()))
                .max(Comparator.<List<String>>comparingInt(place -> common(place, from))
                        .thenComparingInt(place -> -place.size()))
                .map(place -> pointer(place, from, spelled(name, place)));
    }

    private String spelled(String name, List<String> record) {
        return recordsByName.get(plain(name)).stream()
                .filter(place -> place.subList(0, place.size() - 1).equals(record))
                .map(place -> place.get(place.size() - 1))
                .findFirst()
                .orElse(name);
    }

    private void collect(RecordShape shape, List<String> at) {
        shape.fields().forEach((name, field) -> {
            List<String> child = new ArrayList<>(at);
            child.add(name);
            recordsByName.computeIfAbsent(plain(name), key -> new ArrayList<>()).add(List.copyOf(child));
            FieldShape element = field.element();
            if (element != null) {
                child.add("0");
            }
            FieldShape inner = element == null ? field : element;
            if (inner.kind() == FieldKind.OBJECT) {
                collect(RecordShape.of(inner.type()), child);
            }
        });
    }

    /** How many steps from the root they share; an element of a list is like the others. */
    private static int common(List<String> place, List<String> from) {
        int same = 0;
        while (same < Math.min(place.size(), from.size())
                && (place.get(same).equals(from.get(same)) || place.get(same).equals("0"))) {
            same++;
        }
        return same;
    }

    private static String pointer(List<String> place, List<String> from, String name) {
        int same = common(place, from);
        List<String> path = new ArrayList<>(from.subList(0, same));
        path.addAll(place.subList(same, place.size()));
        path.add(name);
        return "/" + String.join("/", path);
    }

    private static List<String> segments(String pointer) {
        return pointer.isEmpty() ? List.of() : List.of(pointer.substring(1).split("/"));
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replace("_", "");
    }
}
