package wayside.server.http;

import com.fasterxml.jackson.databind.ObjectWriter;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import wayside.server.answer.CsvTable;
import wayside.server.answer.Explanation;
import wayside.server.answer.Figures;
import wayside.server.binding.RequestReader;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;
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
        String type = Accepts.choose(context.header("Accept"), operation.types());
        if (operation.types().size() > 1) {
            context.res().addHeader("Vary", "Accept");
        }
        Figures figures = Figures.explained(explanation(context, type));
        YearForm<?, A> yearForm = operation.yearForm();
        if (yearForm != null && FormBody.is(context)) {
            ofYear(context, yearForm, figures, type);
        } else {
            Q request = reader.join().read(Body.read(context), operation.request());
            double price = operation.price().applyAsDouble(request);
            answer(context, type, price, () -> operation.calculation().apply(request, figures));
        }
    }

    private Explanation explanation(Context context, String type) {
        if (type.equals(CsvTable.TYPE)) {
            Query.refuse(context, "a table comes without the way to its figures.");
            return Explanation.NONE;
        }
        boolean minimal = Preference.isMinimal(context);
        Preference.mark(context, minimal);
        return Query.explanation(context, minimal ? Explanation.NONE : Explanation.ALL);
    }

    private <F extends Record> void ofYear(Context context, YearForm<F, A> form, Figures figures, String type) {
        FormBody body = FormBody.of(context, bodyLimitBytes);
        F request = reader.join().readWithYear(body.request(), form.request(), body.faults());
        TypicalYear year = body.year();
        double price = form.price().applyAsDouble(request);
        answer(context, type, price, () -> form.calculation().apply(request, year, figures));
    }

    private void answer(Context context, String type, double price, Supplier<A> calculation) {
        context.contentType(type);
        calculations.answer(context, price, () -> write(calculation.get(), type));
    }

    private byte[] write(A answer, String type) {
        CsvTable<A> table = operation.table();
        if (table == null || !type.equals(CsvTable.TYPE)) {
            return Json.bytes(writer, answer);
        }
        byte[] text = table.of(answer);
        if (text == null) {
            throw new ProblemException(Problem.of(
                    ProblemKind.NOT_ACCEPTABLE,
                    "This answer is no table, for it has no " + table.list() + ". " + table.when()));
        }
        return text;
    }
}
