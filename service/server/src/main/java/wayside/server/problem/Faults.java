package wayside.server.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/** Collects what is wrong with a request. Beyond a limit it only counts, so that an answer stays short. */
public final class Faults {
    /** More than this helps nobody. */
    public static final int LISTED = 100;

    private final List<Fault> listed = new ArrayList<>();
    private final Set<String> pointers = new HashSet<>();
    private final Set<String> suspected = new HashSet<>();
    private int count;

    /** Adds a fault, unless its field already has one. */
    public void add(String pointer, Supplier<Fault> fault) {
        if (listed.size() >= LISTED) {
            count++;
        } else if (pointers.add(pointer)) {
            listed.add(fault.get());
            count++;
        }
    }

    /** Counts faults that are not looked at. */
    public void countOnly(int more) {
        count += more;
    }

    /** Notes a field that an unknown name was probably meant to be: whatever else is said of it would be noise. */
    public void suspect(String pointer) {
        suspected.add(pointer);
    }

    public boolean isEmpty() {
        return count == 0;
    }

    /** Whether this very field has a fault among those listed, or goes by a name that has one. */
    public boolean blames(String pointer) {
        return pointers.contains(pointer) || suspected.contains(pointer);
    }

    /** Whether no more faults will be listed. */
    public boolean isFull() {
        return listed.size() >= LISTED;
    }

    public int count() {
        return count;
    }

    /** In the order of the fields' pointers, numbers by their value. */
    public List<Fault> listed() {
        return listed.stream()
                .sorted(Comparator.comparing(Fault::pointer, Faults::compare))
                .toList();
    }

    private static int compare(String a, String b) {
        String[] left = a.split("/", -1);
        String[] right = b.split("/", -1);
        for (int i = 0; i < Math.min(left.length, right.length); i++) {
            int order = isNumber(left[i]) && isNumber(right[i])
                    ? Integer.compare(Integer.parseInt(left[i]), Integer.parseInt(right[i]))
                    : left[i].compareTo(right[i]);
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(left.length, right.length);
    }

    private static boolean isNumber(String segment) {
        return !segment.isEmpty() && segment.length() < 9 && segment.chars().allMatch(c -> c >= '0' && c <= '9');
    }
}
