package wayside.server.http;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;

/** Whether a client takes what an address answers, RFC 9110 section 12.5.1. */
final class Accepts {
    private Accepts() {}

    /** @throws ProblemException when the header names types, and none of them is this one */
    static void require(@Nullable String header, String type) {
        if (header != null && !header.isBlank() && !takes(header, type)) {
            throw new ProblemException(Problem.of(
                    ProblemKind.NOT_ACCEPTABLE, "This address answers " + type + "; Accept rules that out."));
        }
    }

    /** The most specific range that matches decides; a weight of 0 refuses. */
    static boolean takes(String header, String type) {
        String family = type.substring(0, type.indexOf('/')) + "/*";
        int best = 0;
        boolean takes = false;
        for (String range : header.toLowerCase(Locale.ROOT).split(",", -1)) {
            String name = range.split(";", 2)[0].strip();
            int rank = name.equals(type) ? 3 : name.equals(family) ? 2 : name.equals("*/*") ? 1 : 0;
            if (rank > best) {
                best = rank;
                takes = !range.replace(" ", "").matches(".*;q=0(\\.0*)?(;.*)?");
            }
        }
        return takes;
    }
}
