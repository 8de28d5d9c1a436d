package wayside.server.http;

import io.javalin.http.Context;

/** Headers that every answer bears. */
final class Security {
    /** Pages bring their own script and style in files of this service, and call nobody else. */
    private static final String CONTENT_POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:;"
                    + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'self'";

    private Security() {}

    static void mark(Context context) {
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "no-referrer");
        context.header("Content-Security-Policy", CONTENT_POLICY);
        // The bundle and the answers are there for pages of other origins.
        context.header("Cross-Origin-Resource-Policy", "cross-origin");
    }
}
