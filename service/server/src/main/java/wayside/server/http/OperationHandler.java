package wayside.server.http;

import com.fasterxml.jackson.databind.ObjectWriter;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.io.IOException;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import wayside.server.mapping.Explanation;
import wayside.server.mapping.Figures;
import wayside.server.mapping.RequestReader;
import wayside.sizing.solar.epw.TypicalYear;

/** Read, call, write. */
final class OperationHandler<Q extends Record, A extends Record> implements Handler {
    private final Operation<Q, A> operation;
    private final CompletableFuture<RequestReader> reader;
    private final ObjectWriter writer;
    private final int bodyLimitBytes;
    private final Gate gate;

    OperationHandler(
            Operation<Q, A> operation, CompletableFuture<RequestReader> reader, int bodyLimitBytes, Gate gate) {
        this.operation = operation;
        this.reader = reader;
        this.writer = Json.writer(operation.response());
        this.bodyLimitBytes = bodyLimitBytes;
        this.gate = gate;
    }

    @Override
    public void handle(Context context) throws Exception {
        Accepts.require(context.header("Accept"), Json.TYPE);
        boolean minimal = Preference.isMinimal(context);
        Figures figures = Figures.explained(Query.explanation(context, minimal ? Explanation.NONE : Explanation.ALL));
        YearForm<?, A> yearForm = operation.yearForm();
        A answer = yearForm != null && FormBody.is(context)
                ? ofYear(context, yearForm, figures)
                : ofRequest(context, figures);
        Preference.mark(context, minimal);
        context.contentType(Json.TYPE);
        context.result(Json.bytes(writer, answer));
    }

    private <F extends Record> A ofYear(Context context, YearForm<F, A> form, Figures figures) throws IOException {
        FormBody body = FormBody.of(context, bodyLimitBytes);
        F request = reader.join().readWithYear(body.request(), form.request());
        TypicalYear year = body.year();
        return calculate(() -> form.calculation().apply(request, year, figures));
    }

    private A ofRequest(Context context, Figures figures) throws IOException {
        Q request = reader.join().read(Body.read(context, bodyLimitBytes), operation.request());
        return calculate(() -> operation.calculation().apply(request, figures));
    }

    private A calculate(Supplier<A> calculation) {
        return operation.heavy() ? gate.through(calculation) : calculation.get();
    }
}
