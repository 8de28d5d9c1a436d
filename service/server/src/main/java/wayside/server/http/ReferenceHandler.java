package wayside.server.http;

import com.fasterxml.jackson.databind.ObjectWriter;
import io.javalin.http.Context;
import java.util.Optional;
import wayside.server.operation.reference.ReferenceList;
import wayside.server.operation.reference.ReferenceTableView;
import wayside.server.operation.reference.ReferenceWriter;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;

/** The tables behind the figures. They change with the release only, so clients may keep them for a while. */
final class ReferenceHandler {
    private static final String KEPT = "public, max-age=3600";

    private final ObjectWriter lists = Json.writer(ReferenceList.class);
    private final ObjectWriter tables = Json.writer(ReferenceTableView.class);
    private final PageCache list =
            new PageCache(name -> Optional.of(Page.of(Json.bytes(lists, ReferenceWriter.list()), Json.TYPE)));
    private final PageCache byName = new PageCache(
            name -> ReferenceWriter.find(name).map(table -> Page.of(Json.bytes(tables, table), Json.TYPE)));

    void list(Context context) {
        Accepts.require(context.header("Accept"), Json.TYPE);
        Query.refuse(context);
        list.find("").orElseThrow().send(context, KEPT);
    }

    void table(Context context) {
        Accepts.require(context.header("Accept"), Json.TYPE);
        Query.refuse(context);
        byName.find(context.pathParam("folder") + "/" + context.pathParam("table"))
                .orElseThrow(() -> new ProblemException(
                        Problem.of(ProblemKind.NOT_FOUND, "There is no such table; GET /v1/reference names them all.")))
                .send(context, KEPT);
    }
}
