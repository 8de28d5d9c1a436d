package wayside.server.http;

import com.fasterxml.jackson.databind.ObjectWriter;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import wayside.server.mapping.RequestReader;

/** Read, call, write. */
final class OperationHandler<Q extends Record, A extends Record> implements Handler {
    private final Operation<Q, A> operation;
    private final RequestReader reader;
    private final ObjectWriter writer;
    private final int bodyLimitBytes;

    OperationHandler(Operation<Q, A> operation, RequestReader reader, int bodyLimitBytes) {
        this.operation = operation;
        this.reader = reader;
        this.writer = Json.writer(operation.response());
        this.bodyLimitBytes = bodyLimitBytes;
    }

    @Override
    public void handle(Context context) throws Exception {
        Accepts.require(context.header("Accept"), Json.TYPE);
        Q request = reader.read(Body.read(context, bodyLimitBytes), operation.request());
        A answer = operation.calculation().apply(request);
        context.contentType(Json.TYPE).result(Json.bytes(writer, answer));
    }
}
