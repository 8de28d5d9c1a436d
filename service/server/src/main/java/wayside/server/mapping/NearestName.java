package wayside.server.mapping;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The known name that an unknown one was probably meant to be. */
final class NearestName {
    private static final int LONGEST = 64;

    private NearestName() {}

    /** By the fewest changes of single letters (Levenshtein 1966), if those are at most half the letters. */
    static Optional<String> of(String unknown, Collection<String> known) {
        if (unknown.length() > LONGEST) {
            return Optional.empty();
        }
        String wanted = unknown.toLowerCase(Locale.ROOT);
        String best = null;
        int least = Math.max(1, unknown.length() / 2) + 1;
        for (String name : known) {
            int distance = distance(wanted, name.toLowerCase(Locale.ROOT));
            if (distance < least) {
                least = distance;
                best = name;
            }
        }
        return Optional.ofNullable(best);
    }

    static int distance(String a, String b) {
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(replaced, Math.min(above[j], row[j - 1]) + 1);
            }
            above = row;
        }
        return above[b.length()];
    }
}
