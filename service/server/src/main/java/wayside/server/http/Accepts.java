package wayside.server.http;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;

/** Whether a client takes what an address answers, RFC 9110 section 12.5. */
final class Accepts {
    /** As RFC 9110 section 12.4.2 has it: 0 to 1. */
    private static final Pattern QUALITY = Pattern.compile(";q=(0(?:\\.[0-9]*)?|1(?:\\.0*)?)(?:;|$)");

    private Accepts() {}

    /** @throws ProblemException when the header names types, and none of them is this one */
    static void require(@Nullable String header, String type) {
        choose(header, List.of(type));
    }

    /**
     * The type that a client likes best of those that an address answers; the first of equals.
     *
     * @throws ProblemException when the header names types, and none of them is one of these
     */
    static String choose(@Nullable String header, List<String> types) {
        if (header == null || header.isBlank()) {
            return types.get(0);
        }
        String best = types.stream()
                .max(Comparator.comparingDouble((String type) -> weight(header, type))
                        // max gives the last of equals
                        .thenComparing(type -> -types.indexOf(type)))
                .orElseThrow();
        if (weight(header, best) == 0) {
            throw new ProblemException(Problem.of(
                    ProblemKind.NOT_ACCEPTABLE,
                    "This address answers " + String.join(" or ", types) + "; Accept rules that out."));
        }
        return best;
    }

    private static double weight(String header, String type) {
        return weight(header, List.of("*/*", type.substring(0, type.indexOf('/')) + "/*", type));
    }

    /** Whether a client takes an answer in a content coding, RFC 9110 section 12.5.3. */
    static boolean takesCoding(@Nullable String header, String coding) {
        return header != null && weight(header, List.of("*", coding)) > 0;
    }

    /**
     * The weight of the most specific range that matches; 0 when none does, or that refuses.
     *
     * @param matching ranges that match, the most specific last
     */
    private static double weight(String header, List<String> matching) {
        int best = -1;
        double weight = 0;
        for (String range : header.toLowerCase(Locale.ROOT).split(",", -1)) {
            int rank = matching.indexOf(range.split(";", 2)[0].strip());
            if (rank > best) {
                best = rank;
                Matcher quality = QUALITY.matcher(range.replace(" ", ""));
                weight = quality.find() ? Double.parseDouble(quality.group(1)) : 1;
            }
        }
        return weight;
    }
}
