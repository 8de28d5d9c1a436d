package wayside.server.http;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import wayside.server.contract.Endpoint;
import wayside.server.mapping.Figures;

/**
 * A calculation of the contract: read a request, ask the core, write the answer.
 *
 * @param <Q> request record
 * @param <A> response record
 * @param heavy whether it may take the cores for long, and so has its own limit of requests at once
 * @param yearForm the other way to ask it, with a typical year, if there is one
 */
record Operation<Q extends Record, A extends Record>(
        Endpoint endpoint,
        Class<Q> request,
        Class<A> response,
        BiFunction<Q, Figures, A> calculation,
        boolean heavy,
        @Nullable YearForm<?, A> yearForm) {

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
        Endpoint endpoint =
                new Endpoint("POST", "/v1/" + id, id, summary, description, request, null, response, List.of());
        Function<Q, R> asked = read.andThen(answer);
        return new Operation<>(
                endpoint, request, response, (body, figures) -> write.apply(asked.apply(body), figures), false, null);
    }

    /** The same, for work that is long enough to need a limit of requests at once. */
    Operation<Q, A> asHeavy() {
        return new Operation<>(endpoint, request, response, calculation, true, yearForm);
    }

    /** The same, which may also be asked with a typical year. */
    <F extends Record> Operation<Q, A> withYear(Class<F> form, YearForm.Calculation<F, A> ofYear) {
        return new Operation<>(
                endpoint.withForm(form), request, response, calculation, heavy, new YearForm<>(form, ofYear));
    }
}
