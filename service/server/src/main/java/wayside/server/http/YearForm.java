package wayside.server.http;

import java.util.function.ToDoubleFunction;
import wayside.server.answer.Figures;
import wayside.sizing.solar.epw.TypicalYear;

/**
 * The other way to ask an operation: a form of two parts, the request and a typical year of weather.
 *
 * @param request record of the part {@code request}
 * @param price of the request [ms of one core]
 * @param calculation from both to the answer
 */
record YearForm<F extends Record, A extends Record>(
        Class<F> request, ToDoubleFunction<F> price, Calculation<F, A> calculation) {
    /** From a request and its year to the answer, explained or bare. */
    @FunctionalInterface
    interface Calculation<F, A> {
        A apply(F request, TypicalYear year, Figures figures);
    }
}
