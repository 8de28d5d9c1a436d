package wayside.server.problem;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A problem document of RFC 9457.
 *
 * @param type address of a page that explains the kind of problem, relative to the service
 * @param title the kind of problem, the same each time
 * @param detail what is wrong this time
 * @param errors each bad field, when the fields are the problem
 * @param moreErrors how many there are beyond those listed
 * @param line of malformed JSON, from 1
 * @param column of malformed JSON, from 1
 * @param requestId by which the request is found in the log
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Problem(
        String type,
        String title,
        int status,
        String detail,
        @Nullable List<Fault> errors,
        @Nullable Integer moreErrors,
        @Nullable Integer line,
        @Nullable Integer column,
        @Nullable String requestId) {

    /** The same, of a request. */
    public Problem of(String id) {
        return new Problem(type, title, status, detail, errors, moreErrors, line, column, id);
    }

    public static Problem of(ProblemKind kind, String detail) {
        return new Problem(kind.type(), kind.title(), kind.status(), detail, null, null, null, null, null);
    }

    /** Malformed JSON at a place. */
    public static Problem at(ProblemKind kind, String detail, int line, int column) {
        return new Problem(kind.type(), kind.title(), kind.status(), detail, null, null, line, column, null);
    }

    public static Problem of(Faults faults) {
        ProblemKind kind = ProblemKind.INVALID_FIELDS;
        int more = faults.count() - faults.listed().size();
        String detail = faults.count() == 1
                ? "One field needs a change; see errors."
                : faults.count() + " fields need a change; see errors.";
        return new Problem(
                kind.type(),
                kind.title(),
                kind.status(),
                detail,
                faults.listed(),
                more == 0 ? null : more,
                null,
                null,
                null);
    }
}
