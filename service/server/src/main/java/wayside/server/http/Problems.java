package wayside.server.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.MethodNotAllowedResponse;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.io.EofException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wayside.server.intake.RequestId;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;

/** Turns whatever ends a request badly into a problem document. */
final class Problems {
    private static final Logger LOG = LoggerFactory.getLogger(Problems.class);

    private Problems() {}

    /** What is told when memory is short, made beforehand: then is no time to make it. */
    private static final byte[] SHORT_OF_MEMORY =
            Json.bytes(Problem.of(ProblemKind.INTERNAL, "The service could not finish this; the mistake is ours."));

    /** Answers even what Javalin leaves without a word: an {@link Error}. */
    static void lastResort(HttpServletResponse response, Error error) {
        LOG.error("Unexpected failure: {}", error.getClass().getName());
        response.setStatus(ProblemKind.INTERNAL.status());
        response.setContentType(Json.PROBLEM_TYPE);
        try {
            response.getOutputStream().write(SHORT_OF_MEMORY);
        } catch (IOException e) {
            // The client is gone.
            LOG.debug("No answer could be written");
        }
    }

    static void register(RoutesConfig routes) {
        routes.exception(ProblemException.class, (e, context) -> {
            e.headers().forEach(context::header);
            write(context, e.problem());
        });
        routes.exception(HttpResponseException.class, Problems::standard);
        routes.exception(
                HttpException.RuntimeException.class,
                (e, context) -> write(
                        context, Problem.of(ProblemKind.ofStatus(e.getCode()), "The message cannot be read as HTTP.")));
        routes.exception(
                EofException.class,
                (e, context) -> write(
                        context, Problem.of(ProblemKind.BAD_REQUEST, "The connection ended before the body did.")));
        // The server itself ends the wait for a body, and would say no word.
        routes.error(
                ProblemKind.REQUEST_TIMEOUT.status(),
                context -> write(
                        context,
                        Problem.of(ProblemKind.REQUEST_TIMEOUT, "The body did not come within the time set.")));
        routes.exception(Exception.class, (e, context) -> {
            // The message might quote the request, so the log gets the kind of failure and where it came from.
            LOG.error("Unexpected failure of {}: {}", context.endpoint().path, place(e));
            write(context, Problem.of(ProblemKind.INTERNAL, "The mistake is ours and has been logged."));
        });
    }

    static void write(Context context, Problem problem) {
        context.status(problem.status())
                .contentType(Json.PROBLEM_TYPE)
                .result(Json.bytes(problem.of(RequestId.of(context.req().getAttribute(RequestId.attribute()))
                        .id())));
    }

    private static void standard(HttpResponseException e, Context context) {
        if (e instanceof MethodNotAllowedResponse) {
            String allowed = e.getDetails().getOrDefault("availableMethods", "");
            context.header("Allow", allowed);
            write(context, Problem.of(ProblemKind.METHOD_NOT_ALLOWED, "Use " + allowed + " here."));
            return;
        }
        ProblemKind kind = ProblemKind.ofStatus(e.getStatus());
        String detail = kind == ProblemKind.NOT_FOUND
                ? "The contract at /openapi.json lists every address."
                : kind.title() + ".";
        write(context, Problem.of(kind, detail));
    }

    private static String place(Exception e) {
        StackTraceElement[] trace = e.getStackTrace();
        StringBuilder text = new StringBuilder(e.getClass().getName());
        for (int i = 0; i < Math.min(trace.length, 12); i++) {
            text.append(" < ").append(trace[i]);
        }
        return text.toString();
    }
}
