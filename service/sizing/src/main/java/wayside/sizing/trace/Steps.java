package wayside.sizing.trace;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The steps of an answer in order, each under a readable id of its own, and none said twice. */
final class Steps {
    private final List<Step> all = new ArrayList<>();
    private final Map<String, List<Step>> byName = new HashMap<>();
    private final Map<String, Step> byId = new HashMap<>();

    List<Step> all() {
        return Collections.unmodifiableList(all);
    }

    /** The step that already says the same, or else a new one under an id that no other has. */
    Step add(Derived value, List<Step.StepInput> inputs) {
        String name = slug(value.label());
        List<Step> namesakes = byName.computeIfAbsent(name, key -> new ArrayList<>(1));
        Step unnamed = new Step(name, value, inputs);
        for (Step other : namesakes) {
            if (other.saysTheSameAs(unnamed)) {
                return other;
            }
        }
        Step step = new Step(free(name, namesakes.size() + 1), value, inputs);
        namesakes.add(step);
        byId.put(step.id(), step);
        all.add(step);
        return step;
    }

    /** The name itself for the first of its name; a label may itself end in a number, so the next one may be taken. */
    private String free(String name, int first) {
        int number = first;
        String id = number == 1 ? name : name + "-" + number;
        while (byId.containsKey(id)) {
            number++;
            id = name + "-" + number;
        }
        return id;
    }

    /** Small letters and digits, a hyphen for whatever stands between them. */
    private static String slug(String label) {
        StringBuilder id = new StringBuilder(label.length());
        boolean gap = false;
        for (int i = 0; i < label.length(); i++) {
            char letter = Character.toLowerCase(label.charAt(i));
            boolean kept = (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9');
            if (kept) {
                if (gap && id.length() > 0) {
                    id.append('-');
                }
                id.append(letter);
            }
            gap = !kept;
        }
        return id.length() == 0 ? "step" : id.toString();
    }
}
