package wayside.server.http;

import java.nio.ByteBuffer;
import java.util.List;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import wayside.server.intake.Refusal;
import wayside.server.intake.RequestId;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemKind;

/** Tells what never gets as far as a handler: messages that are no HTTP, or that come too slowly. */
public final class HttpErrors extends ErrorHandler {
    private final Cors cors;

    public HttpErrors(List<String> allowedOrigins) {
        this.cors = new Cors(allowedOrigins);
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        int status = response.getStatus();
        Refusal refusal = Refusal.of(request);
        Problem problem = (refusal != null
                ? refusal.problem()
                : Problem.of(ProblemKind.ofStatus(status), HttpStatus.getMessage(status) + "."));
        Object id = request.getAttribute(RequestId.attribute());
        byte[] body =
                Json.bytes(id == null ? problem : problem.of(RequestId.of(id).id()));
        response.getHeaders().put("X-Content-Type-Options", "nosniff");
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, Json.PROBLEM_TYPE);
        cors.headers(request.getHeaders().get(HttpHeader.ORIGIN)).forEach(response.getHeaders()::put);
        response.write(true, ByteBuffer.wrap(body), callback);
        return true;
    }
}
