package wayside.server.http;

import io.javalin.http.Context;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;

/** Sends files of the jar: the contract, the docs, the widget and its pages. */
final class Pages {
    /** Clients ask each time; the tag keeps that cheap. */
    private static final String ASK_AGAIN = "no-cache";

    private final PageCache files = new PageCache(Page::find);

    void send(Context context, String path) {
        files.find(path)
                .orElseThrow(
                        () -> new ProblemException(Problem.of(ProblemKind.NOT_FOUND, "There is no such page here.")))
                .send(context, ASK_AGAIN);
    }

    /** Sends a file below a folder; a name that could lead out of it finds nothing. */
    void sendBelow(Context context, String folder, String name) {
        boolean plain = name.matches("[A-Za-z0-9_-]+(\\.[A-Za-z0-9_-]+)*(/[A-Za-z0-9_-]+(\\.[A-Za-z0-9_-]+)*)*");
        send(context, plain ? folder + name : "");
    }
}
