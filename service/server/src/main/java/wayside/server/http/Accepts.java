package wayside.server.http;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;

/** Whether a client takes what an address answers, RFC 9110 section 12.5. */
final class Accepts {
    private Accepts() {}

    /** @throws ProblemException when the header names types, and none of them is this one */
    static void require(@Nullable String header, String type) {
        if (header != null && !header.isBlank() && !takes(header, type)) {
            throw new ProblemException(Problem.of(
                    ProblemKind.NOT_ACCEPTABLE, "This address answers " + type + "; Accept rules that out."));
        }
    }

    static boolean takes(String header, String type) {
        return takes(header, List.of("*/*", type.substring(0, type.indexOf('/')) + "/*", type));
    }

    /** Whether a client takes an answer in a content coding, RFC 9110 section 12.5.3. */
    static boolean takesCoding(@Nullable String header, String coding) {
        return header != null && takes(header, List.of("*", coding));
    }

    /**
     * The most specific range that matches decides; a weight of 0 refuses.
     *
     * @param matching ranges that match, the most specific last
     */
    private static boolean takes(String header, List<String> matching) {
        int best = -1;
        boolean takes = false;
        for (String range : header.toLowerCase(Locale.ROOT).split(",", -1)) {
            int rank = matching.indexOf(range.split(";", 2)[0].strip());
            if (rank > best) {
                best = rank;
                takes = !range.replace(" ", "").matches(".*;q=0(\\.0*)?(;.*)?");
            }
        }
        return takes;
    }
}
