package wayside.sizing.trace;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The steps of an answer in order, each under a readable id of its own, and none said twice. */
final class Steps {
    /** By letter of ISO 8859-1, what it is in an id; 0 for what only parts words. */
    private static final byte[] IN_ID = new byte[256];

    static {
        for (byte c = 'a'; c <= 'z'; c++) {
            IN_ID[c] = c;
            IN_ID[Character.toUpperCase(c)] = c;
        }
        for (byte c = '0'; c <= '9'; c++) {
            IN_ID[c] = c;
        }
    }

    /** Enough for a whole system: the collections of an answer then seldom grow while it is made. */
    private static final int USUAL = 700;

    private final List<Step> all = new ArrayList<>(USUAL);
    private final Map<String, Step> byId = new HashMap<>(2 * USUAL);
    private final Map<String, List<Step>> namesakes = new HashMap<>();

    List<Step> all() {
        return Collections.unmodifiableList(all);
    }

    /** The step that already says the same, or else this one under an id that no other has. */
    Step add(Step unnamed) {
        String name = slug(unnamed.label());
        Step first = byId.get(name);
        if (first == null) {
            return keep(unnamed.withId(name));
        }
        List<Step> others = namesakes.computeIfAbsent(name, key -> new ArrayList<>(List.of(first)));
        for (Step other : others) {
            if (other.saysTheSameAs(unnamed)) {
                return other;
            }
        }
        Step step = keep(unnamed.withId(numbered(name, others.size() + 1)));
        others.add(step);
        return step;
    }

    private Step keep(Step step) {
        byId.put(step.id(), step);
        all.add(step);
        return step;
    }

    /** A label may itself end in a number, so the next one may be taken. */
    private String numbered(String name, int first) {
        int number = first;
        while (byId.containsKey(name + "-" + number)) {
            number++;
        }
        return name + "-" + number;
    }

    /** Small letters and digits, a hyphen for whatever stands between them. An answer has hundreds: no patterns here. */
    private static String slug(String label) {
        byte[] text = label.getBytes(StandardCharsets.ISO_8859_1);
        int end = 0;
        boolean gap = false;
        for (byte letter : text) {
            byte kept = IN_ID[letter & 0xff];
            if (kept != 0) {
                // A hyphen stands for at least one letter, so what is written never passes what is read.
                if (gap && end > 0) {
                    text[end++] = '-';
                }
                text[end++] = kept;
            }
            gap = kept == 0;
        }
        return end == 0 ? "step" : new String(text, 0, end, StandardCharsets.ISO_8859_1);
    }
}
