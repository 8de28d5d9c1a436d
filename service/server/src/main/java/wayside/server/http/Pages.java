package wayside.server.http;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;

/** Sends files of the jar: the contract, the docs, the widget and its pages. Each is read once. */
final class Pages {
    private final Map<String, Page> known = new ConcurrentHashMap<>();

    /** Sends the file, or 304 when the client has it. Clients ask each time; the tag keeps that cheap. */
    void send(Context context, String path) {
        Page page = find(path)
                .orElseThrow(
                        () -> new ProblemException(Problem.of(ProblemKind.NOT_FOUND, "There is no such page here.")));
        context.header("ETag", page.tag()).header("Cache-Control", "no-cache");
        String held = context.header("If-None-Match");
        if (held != null && (held.contains(page.tag()) || held.strip().equals("*"))) {
            context.status(304);
            return;
        }
        context.contentType(page.type()).result(page.bytes());
    }

    /** Sends a file below a folder; a name that could lead out of it finds nothing. */
    void sendBelow(Context context, String folder, String name) {
        boolean plain = name.matches("[A-Za-z0-9_-]+(\\.[A-Za-z0-9_-]+)*(/[A-Za-z0-9_-]+(\\.[A-Za-z0-9_-]+)*)*");
        send(context, plain ? folder + name : "");
    }

    private Optional<Page> find(String path) {
        Page kept = known.get(path);
        if (kept != null) {
            return Optional.of(kept);
        }
        Optional<Page> page = Page.find(path);
        // Only what exists is kept, or a client could fill the memory with names.
        page.ifPresent(found -> known.put(path, found));
        return page;
    }
}
