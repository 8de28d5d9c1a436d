package wayside.server.http;

import com.fasterxml.jackson.databind.ObjectWriter;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
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
    private final Calculations calculations;

    OperationHandler(
            Operation<Q, A> operation,
            CompletableFuture<RequestReader> reader,
            int bodyLimitBytes,
            Calculations calculations) {
        this.operation = operation;
        this.reader = reader;
        this.writer = Json.writer(operation.response());
        this.bodyLimitBytes = bodyLimitBytes;
        this.calculations = calculations;
    }

    @Override
    public void handle(Context context) {
        Accepts.require(context.header("Accept"), Json.TYPE);
        boolean minimal = Preference.isMinimal(context);
        Figures figures = Figures.explained(Query.explanation(context, minimal ? Explanation.NONE : Explanation.ALL));
        YearForm<?, A> yearForm = operation.yearForm();
        if (yearForm != null && FormBody.is(context)) {
            ofYear(context, yearForm, figures, minimal);
        } else {
            Q request = reader.join().read(Body.read(context), operation.request());
            answer(
                    context,
                    minimal,
                    operation.price().applyAsDouble(request),
                    all -> operation.calculation().apply(request, all),
                    figures);
        }
    }

    private <F extends Record> void ofYear(Context context, YearForm<F, A> form, Figures figures, boolean minimal) {
        FormBody body = FormBody.of(context, bodyLimitBytes);
        F request = reader.join().readWithYear(body.request(), form.request(), body.faults());
        TypicalYear year = body.year();
        answer(
                context,
                minimal,
                form.price().applyAsDouble(request),
                all -> form.calculation().apply(request, year, all),
                figures);
    }

    private void answer(
            Context context, boolean minimal, double price, Function<Figures, A> calculation, Figures figures) {
        Preference.mark(context, minimal);
        context.contentType(Json.TYPE);
        calculations.answer(context, price, () -> Json.bytes(writer, calculation.apply(figures)));
    }
}
