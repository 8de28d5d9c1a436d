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

    private About() {}

    /** The page that says what can be asked here. */
    static Page page(Operations operations) {
        ServiceView service = new ServiceView(
                Engine.VIEW,
                CONTRACT,
                "/openapi.generators.json",
                DOCUMENTATION,
                operations.endpoints().stream()
                        .map(endpoint -> new OperationView(
                                endpoint.id(), endpoint.method(), endpoint.path(), endpoint.summary()))
                        .toList());
        return Page.of(Json.bytes(Json.writer(ServiceView.class), service), Json.TYPE);
    }

    /** Says with every answer of the API where it is described (RFC 8631). */
    static void link(Context context) {
        if (context.path().startsWith("/v1")) {
            context.res().addHeader("Link", LINKS);
        }
    }
}
