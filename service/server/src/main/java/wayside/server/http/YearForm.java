package wayside.server.http;

import java.util.function.BiFunction;
import wayside.sizing.solar.epw.TypicalYear;

/**
 * The other way to ask an operation: a form of two parts, the request and a typical year of weather.
 *
 * @param request record of the part {@code request}
 * @param calculation from both to the answer
 */
record YearForm<F extends Record, A extends Record>(Class<F> request, BiFunction<F, TypicalYear, A> calculation) {}
