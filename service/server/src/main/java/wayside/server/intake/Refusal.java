package wayside.server.intake;

import java.util.Map;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemKind;

/**
 * Why a request gets no further.
 *
 * @param reason one of a few words, for the metrics
 */
public record Refusal(Problem problem, String reason, Map<String, String> headers) {
    private static final String ATTRIBUTE = "wayside.refusal";

    public Refusal {
        headers = Map.copyOf(headers);
    }

    static Refusal of(ProblemKind kind, String reason, String detail) {
        return new Refusal(Problem.of(kind, detail), reason, Map.of());
    }

    /** Too much at once: of this client, or of all. */
    static Refusal busy(boolean ofThisClient, String reason, String what, int retryAfterSeconds) {
        ProblemKind kind = ofThisClient ? ProblemKind.TOO_MANY_REQUESTS : ProblemKind.BUSY;
        String whose = ofThisClient ? " of yours at once" : " at once";
        String detail = "Too many " + what + whose + "; come again in " + retryAfterSeconds + " s.";
        return new Refusal(
                Problem.of(kind, detail), reason, Map.of("Retry-After", Integer.toString(retryAfterSeconds)));
    }

    /** What the error handler of the server is to tell; null when it is something else that went wrong. */
    public static @Nullable Refusal of(Request request) {
        return request.getAttribute(ATTRIBUTE) instanceof Refusal refusal ? refusal : null;
    }

    /** Answers it. What is left of the body is not read: the server then ends the connection. */
    void answer(Request request, Response response, Callback callback) {
        request.setAttribute(ATTRIBUTE, this);
        headers.forEach(response.getHeaders()::put);
        Response.writeError(request, response, callback, problem.status());
    }
}
