package wayside.server.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.Explanation;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;

/** What follows the question mark of an address: nothing that stands there is dropped in silence. */
final class Query {
    private static final int LONGEST = 80;
    private static final String EXPLAIN = "explain";
    private static final String TAKEN = "explain takes all, none, or the JSON Pointer of a figure of the answer.";

    private Query() {}

    /** @throws ProblemException for any query parameter, with what came */
    static void refuse(Context context) {
        refuse(context, "this address takes none.");
    }

    /**
     * Refuses any query parameter.
     *
     * @param why the rest of the sentence
     */
    static void refuse(Context context, String why) {
        String query = context.queryString();
        if (query != null && !query.isEmpty()) {
            throw unknown(query, why);
        }
    }

    /**
     * Which figures come with the way to them.
     *
     * @param otherwise when the address does not say
     * @throws ProblemException for any other query parameter, and for a value that is none of those taken
     */
    static Explanation explanation(Context context, Explanation otherwise) {
        Map<String, List<String>> parameters = context.queryParamMap();
        if (parameters.isEmpty()) {
            refuse(context);
            return otherwise;
        }
        List<String> values = parameters.getOrDefault(EXPLAIN, List.of());
        if (parameters.size() > 1 || values.size() != 1) {
            throw unknown(
                    context.queryString(),
                    "what is asked stands in the body, and "
                            + "the header Prefer: return=minimal asks for an answer without its derivation. Here "
                            + TAKEN);
        }
        return switch (values.get(0)) {
            case "all" -> Explanation.ALL;
            case "none" -> Explanation.NONE;
            default -> of(values.get(0));
        };
    }

    private static Explanation of(String pointer) {
        if (!pointer.startsWith("/")) {
            throw unknown(EXPLAIN + '=' + pointer, TAKEN);
        }
        return new Explanation.Of(pointer);
    }

    private static ProblemException unknown(@Nullable String query, String taken) {
        String received = query == null ? "" : query.length() > LONGEST ? query.substring(0, LONGEST) + "…" : query;
        return new ProblemException(Problem.of(
                ProblemKind.BAD_REQUEST, "The query parameter " + received + " is not known here: " + taken));
    }
}
