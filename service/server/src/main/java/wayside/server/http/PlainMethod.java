package wayside.server.http;

import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Request;

/**
 * Takes {@code X-HTTP-Method-Override} off a request before Javalin, which would route by it, sees it: a proxy that lets
 * some methods through must be able to rely on them.
 */
public final class PlainMethod implements HttpConfiguration.Customizer {
    private static final String OVERRIDE = "X-HTTP-Method-Override";

    @Override
    public Request customize(Request request, HttpFields.Mutable responseHeaders) {
        if (!request.getHeaders().contains(OVERRIDE)) {
            return request;
        }
        HttpFields headers =
                HttpFields.build(request.getHeaders()).remove(OVERRIDE).asImmutable();
        return new Request.Wrapper(request) {
            @Override
            public HttpFields getHeaders() {
                return headers;
            }
        };
    }
}
