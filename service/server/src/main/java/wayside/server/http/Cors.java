package wayside.server.http;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Lets pages of other origins call the service (the Fetch standard's CORS protocol). There are no cookies and no
 * credentials, so any origin may be let in without lending it anything.
 */
final class Cors {
    private static final String ANY = "*";

    private final List<String> allowedOrigins;

    Cors(List<String> allowedOrigins) {
        this.allowedOrigins = List.copyOf(allowedOrigins);
    }

    /**
     * What marks an answer as readable by the calling page, if it may call. Where any may, every answer says so, asked
     * or not: a cache may hand it to a page of another origin.
     */
    Map<String, String> headers(@Nullable String origin) {
        boolean any = allowedOrigins.contains(ANY);
        Map<String, String> headers = new LinkedHashMap<>();
        if (!any) {
            headers.put("Vary", "Origin");
        }
        if (any || (origin != null && allowedOrigins.contains(origin))) {
            headers.put("Access-Control-Allow-Origin", any ? ANY : origin);
            headers.put(
                    "Access-Control-Expose-Headers",
                    "Retry-After, ETag, Preference-Applied, Wayside-Price, X-Request-Id");
        }
        return headers;
    }

    /** Answers OPTIONS: what the address takes, and the preflight question of a browser. */
    void options(Context context, String allow) {
        context.status(204).header("Allow", allow);
        if (isPreflight(context.header("Access-Control-Request-Method"))
                && context.res().getHeader("Access-Control-Allow-Origin") != null) {
            context.header("Access-Control-Allow-Methods", allow);
            context.header("Access-Control-Allow-Headers", "Content-Type, Accept, Prefer, X-Request-Id, traceparent");
            context.header("Access-Control-Max-Age", "86400");
        }
    }

    private static boolean isPreflight(@Nullable String requestedMethod) {
        return requestedMethod != null;
    }
}
