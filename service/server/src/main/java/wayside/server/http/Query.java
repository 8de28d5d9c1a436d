package wayside.server.http;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;

/** What follows the question mark of an address: an operation takes nothing there, and drops nothing in silence. */
final class Query {
    private static final int LONGEST = 80;
    private static final String IN_THE_BODY =
            " What is asked stands in the body; the header Prefer: return=minimal asks"
                    + " for an answer without its derivation.";

    private Query() {}

    /** @throws ProblemException for any query parameter, with what came */
    static void refuse(Context context) {
        String query = context.queryString();
        if (query == null || query.isEmpty()) {
            return;
        }
        String received = query.length() > LONGEST ? query.substring(0, LONGEST) + "…" : query;
        throw new ProblemException(Problem.of(
                ProblemKind.BAD_REQUEST,
                "The query parameter " + received + " is not known here: this address takes none."
                        + (HandlerType.POST.equals(context.method()) ? IN_THE_BODY : "")));
    }
}
