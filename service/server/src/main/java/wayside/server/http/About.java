package wayside.server.http;

import io.javalin.http.Context;
import wayside.server.answer.Engine;
import wayside.server.operation.about.OperationView;
import wayside.server.operation.about.ServiceView;

/** What the service says of itself. */
final class About {
    private static final String CONTRACT = "/openapi.json";
    private static final String DOCUMENTATION = "/docs/";
    private static final String LINKS =
            "<%s>; rel=\"service-desc\", <%s>; rel=\"service-doc\"".formatted(CONTRACT, DOCUMENTATION);

    private static final ServiceView SERVICE = new ServiceView(
            Engine.VIEW,
            CONTRACT,
            "/openapi.generators.json",
            DOCUMENTATION,
            Routes.endpoints().stream()
                    .map(endpoint ->
                            new OperationView(endpoint.id(), endpoint.method(), endpoint.path(), endpoint.summary()))
                    .toList());

    static final Page PAGE = Page.of(Json.bytes(Json.writer(ServiceView.class), SERVICE), Json.TYPE);

    private About() {}

    /** Says with every answer of the API where it is described (RFC 8631). */
    static void link(Context context) {
        if (context.path().startsWith("/v1")) {
            context.res().addHeader("Link", LINKS);
        }
    }
}
