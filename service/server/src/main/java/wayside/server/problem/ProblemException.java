package wayside.server.problem;

import java.util.Map;

/** Ends the handling of a request with a problem document. */
public final class ProblemException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;
    private final transient Map<String, String> headers;

    public ProblemException(Problem problem) {
        this(problem, Map.of());
    }

    public ProblemException(Problem problem, Map<String, String> headers) {
        // A client's mistake: no stack trace to pay for.
        super(problem.title(), null, false, false);
        this.problem = problem;
        this.headers = Map.copyOf(headers);
    }

    public Problem problem() {
        return problem;
    }

    public Map<String, String> headers() {
        return headers;
    }
}
