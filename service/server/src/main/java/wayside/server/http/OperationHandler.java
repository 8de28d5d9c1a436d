package wayside.server.http;

import com.fasterxml.jackson.databind.ObjectWriter;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.io.IOException;
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
        YearForm<?, A> yearForm = operation.yearForm();
        A answer = yearForm != null && FormBody.is(context)
                ? ofYear(context, yearForm)
                : operation.calculation().apply(reader.read(Body.read(context, bodyLimitBytes), operation.request()));
        context.contentType(Json.TYPE).result(Json.bytes(writer, answer));
    }

    private <F extends Record> A ofYear(Context context, YearForm<F, A> form) throws IOException {
        FormBody body = FormBody.of(context, bodyLimitBytes);
        F request = reader.read(body.request(), form.request());
        return form.calculation().apply(request, body.year());
    }
}
