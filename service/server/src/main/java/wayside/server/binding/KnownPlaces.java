package wayside.server.binding;

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

    /** Path of a record, and how one of its fields is spelled. */
    private record Place(List<String> record, String name) {}

    private final Map<String, List<Place>> placesByName = new HashMap<>();

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
        return FormerNames.of(name, shape.fields().keySet()).orElseGet(() -> nearest(name, record, shape));
    }

    private Suggestion nearest(String name, String record, RecordShape shape) {
        String plain = plain(name);
        boolean inOtherLetters =
                shape.fields().keySet().stream().anyMatch(known -> plain(known).equals(plain));
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

    /** The nearest to a record; in line: below it, or in a record that it stands in. */
    private Optional<String> find(String name, String record, boolean inLine) {
        List<String> from =
                record.isEmpty() ? List.of() : List.of(record.substring(1).split("/", -1));
        return placesByName.getOrDefault(plain(name), List.of()).stream()
                .filter(place -> !inLine
                        || common(place.record(), from)
                                == Math.min(place.record().size(), from.size()))
                .max(Comparator.<Place>comparingInt(place -> common(place.record(), from))
                        .thenComparingInt(place -> -place.record().size()))
                .map(place -> pointer(place, from));
    }

    private void collect(RecordShape shape, List<String> at) {
        shape.fields().forEach((name, field) -> {
            placesByName.computeIfAbsent(plain(name), key -> new ArrayList<>()).add(new Place(at, name));
            List<String> child = new ArrayList<>(at);
            child.add(name);
            FieldShape element = field.element();
            if (element != null) {
                child.add("0");
            }
            FieldShape inner = element == null ? field : element;
            if (inner.kind() == FieldKind.OBJECT) {
                collect(RecordShape.of(inner.type()), List.copyOf(child));
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

    /** With the places in lists that the record itself has. */
    private static String pointer(Place place, List<String> from) {
        int same = common(place.record(), from);
        List<String> path = new ArrayList<>(from.subList(0, same));
        path.addAll(place.record().subList(same, place.record().size()));
        path.add(place.name());
        return "/" + String.join("/", path);
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replace("_", "");
    }
}
