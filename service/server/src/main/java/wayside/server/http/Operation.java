package wayside.server.http;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.CsvTable;
import wayside.server.answer.Figures;
import wayside.server.contract.Endpoint;

/**
 * A calculation of the contract: read a request, ask the core, write the answer.
 *
 * @param <Q> request record
 * @param <A> response record
 * @param price of a request: how long it is likely to take [ms of one core]
 * @param yearForm the other way to ask it, with a typical year, if there is one
 * @param table of the answer, if it is also one
 */
record Operation<Q extends Record, A extends Record>(
        Endpoint endpoint,
        Class<Q> request,
        Class<A> response,
        BiFunction<Q, Figures, A> calculation,
        ToDoubleFunction<Q> price,
        @Nullable YearForm<?, A> yearForm,
        @Nullable CsvTable<A> table) {

    /**
     * An operation posted to {@code /v1/<id>}.
     *
     * @param read from the request to the core's brief
     * @param answer the door of the core
     * @param write from the door's answer to the response, explained or bare
     */
    static <Q extends Record, B, R, A extends Record> Operation<Q, A> of(
            String id,
            String summary,
            String description,
            Class<Q> request,
            Class<A> response,
            Function<Q, B> read,
            Function<B, R> answer,
            BiFunction<R, Figures, A> write) {
        Endpoint endpoint = new Endpoint(
                "POST", "/v1/" + id, id, summary, description, request, null, response, List.of(), null, (int)
                        Price.LIGHT);
        Function<Q, R> asked = read.andThen(answer);
        return new Operation<>(
                endpoint,
                request,
                response,
                (body, figures) -> write.apply(asked.apply(body), figures),
                body -> Price.LIGHT,
                null,
                null);
    }

    /** Types that its answer comes in, the usual one first. */
    List<String> types() {
        return table == null ? List.of(Json.TYPE) : List.of(Json.TYPE, CsvTable.TYPE);
    }

    /** The same, where a request may take long: what it is likely to take says who waits for whom. */
    Operation<Q, A> pricedBy(ToDoubleFunction<Q> newPrice, int newMostMs) {
        Endpoint priced = endpoint.withMostPrice(newMostMs);
        return new Operation<>(priced, request, response, calculation, newPrice, yearForm, table);
    }

    /** The same, which may also be asked with a typical year. */
    <F extends Record> Operation<Q, A> withYear(
            Class<F> form, ToDoubleFunction<F> ofForm, YearForm.Calculation<F, A> ofYear) {
        return new Operation<>(
                endpoint.withForm(form),
                request,
                response,
                calculation,
                price,
                new YearForm<>(form, ofForm, ofYear),
                table);
    }

    /** The same, whose answer is also a table. */
    Operation<Q, A> withTable(CsvTable<A> newTable) {
        return new Operation<>(
                endpoint.withTable(newTable.list() + ": " + newTable.when()),
                request,
                response,
                calculation,
                price,
                yearForm,
                newTable);
    }
}
