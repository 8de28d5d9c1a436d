package wayside.server.binding;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.UnitName.Parted;

/** The known name that an unknown one was probably meant to be; never one of another unit to put in its place. */
final class NearestName {
    private static final int LONGEST = 64;
    /** Names of the contract never change, and one request may hold a hundred others to be held against them. */
    private static final Map<String, Optional<Parted>> KNOWN = new ConcurrentHashMap<>();

    private NearestName() {}

    /** Of the fields of a record. */
    static Suggestion of(String unknown, Map<String, FieldShape> known) {
        if (unknown.length() > LONGEST) {
            return Suggestion.NONE;
        }
        String name = camel(unknown);
        List<Parted> ways = UnitName.all(name);
        boolean clearUnit = ways.stream().anyMatch(Parted::clear);
        Optional<String> synonym = clearUnit ? Optional.empty() : Synonyms.field(name, known.keySet());
        if (synonym.isPresent()) {
            return Suggestion.nearest(synonym.get());
        }
        Match best = null;
        for (Map.Entry<String, FieldShape> field : known.entrySet()) {
            Match match = match(name, clearUnit, ways, field.getKey(), field.getValue());
            if (match != null && (best == null || match.distance() < best.distance())) {
                best = match;
            }
        }
        return best == null ? Suggestion.NONE : best.suggestion();
    }

    /** Of the codes that a field takes. */
    static Optional<String> of(String unknown, Collection<String> known) {
        if (unknown.length() > LONGEST) {
            return Optional.empty();
        }
        Optional<String> synonym = Synonyms.code(unknown, known);
        if (synonym.isPresent()) {
            return synonym;
        }
        String wanted = unknown.toLowerCase(Locale.ROOT);
        String best = null;
        int least = farthest(wanted) + 1;
        for (String code : known) {
            int distance = distance(wanted, code, least - 1);
            if (distance < least) {
                least = distance;
                best = code;
            }
        }
        return Optional.ofNullable(best);
    }

    private record Match(int distance, Suggestion suggestion) {}

    /** The nearest way to read the unknown name as this one; null when it is too far. */
    private static @Nullable Match match(
            String unknown, boolean clearUnit, List<Parted> ways, String name, FieldShape field) {
        Optional<Parted> known = KNOWN.computeIfAbsent(name, UnitName::of);
        String wanted = unknown.toLowerCase(Locale.ROOT);
        Match best = null;
        if (!clearUnit) {
            int farthest = farthest(wanted);
            int whole = distance(wanted, name.toLowerCase(Locale.ROOT), farthest);
            int stem = known.map(parted -> distance(wanted, small(parted), farthest))
                    .orElse(whole);
            best = within(Math.min(whole, stem), wanted, Suggestion.nearest(name));
        }
        for (Parted parted : ways) {
            Match match = match(parted, name, field, known);
            // At equal distance the units are believed: a figure off by a thousand is worse than no name.
            if (match != null && (best == null || match.distance() <= best.distance())) {
                best = match;
            }
        }
        return best;
    }

    private static @Nullable Match match(Parted parted, String name, FieldShape field, Optional<Parted> known) {
        String wanted = small(parted);
        String stem = known.map(NearestName::small).orElse(name.toLowerCase(Locale.ROOT));
        int farthest = parted.clear() ? farthest(wanted) : 0;
        int distance = Math.min(distance(wanted, stem, farthest), distance(Synonyms.stem(wanted), stem, farthest));
        if (!parted.clear() && distance > 0) {
            return null;
        }
        if (known.isPresent()) {
            UnitName to = known.get().unit();
            boolean same = parted.unit().isSameAs(to);
            String how = "in " + Conversion.symbol(known.get().stem(), to)
                    + Conversion.words(known.get().stem(), parted.unit(), to);
            Suggestion.Change change = Conversion.change(known.get().stem(), parted.unit(), to);
            return within(
                    distance, wanted, same ? Suggestion.nearest(name) : Suggestion.inOtherUnits(name, change, how));
        }
        boolean number = field.kind() == FieldKind.NUMBER || field.kind() == FieldKind.INTEGER;
        return number && parted.clear()
                ? within(distance, wanted, Suggestion.inOtherUnits(name, ofShare(parted, field), field.accepted()))
                : null;
    }

    /** A hundredth, for percent of what is a share. */
    private static Suggestion.@Nullable Change ofShare(Parted parted, FieldShape field) {
        Double most = field.bounds().maximum();
        boolean share = parted.unit().quantity() == UnitName.Quantity.SHARE && most != null && most <= 1;
        return share ? new Suggestion.Change(parted.unit().factor(), 0) : null;
    }

    private static @Nullable Match within(int distance, String wanted, Suggestion suggestion) {
        return distance <= farthest(wanted) ? new Match(distance, suggestion) : null;
    }

    private static String small(Parted parted) {
        return parted.stem().toLowerCase(Locale.ROOT);
    }

    /** Half the letters may differ. */
    private static int farthest(String wanted) {
        return Math.max(1, wanted.length() / 2);
    }

    /** {@code duty_cycle} and {@code duty-cycle} as names are written here. */
    private static String camel(String name) {
        StringBuilder camel = new StringBuilder();
        for (String word : name.split("[_\\- ]+", -1)) {
            boolean first = camel.isEmpty() || word.isEmpty();
            camel.append(first ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return camel.toString();
    }

    /**
     * The fewest changes of single letters that make one the other (Levenshtein 1966); one more than the farthest, if there are
     * more.
     */
    static int distance(String a, String b, int farthest) {
        // The lengths alone ask for so many.
        if (Math.abs(a.length() - b.length()) > farthest) {
            return farthest + 1;
        }
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        int[] row = new int[b.length() + 1];
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            int least = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(replaced, Math.min(above[j], row[j - 1]) + 1);
                least = Math.min(least, row[j]);
            }
            if (least > farthest) {
                return farthest + 1;
            }
            int[] spare = above;
            above = row;
            row = spare;
        }
        return Math.min(farthest + 1, above[b.length()]);
    }
}
