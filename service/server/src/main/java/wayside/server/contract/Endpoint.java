package wayside.server.contract;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the contract says of an endpoint.
 *
 * @param method of HTTP
 * @param path with its parameters in braces
 * @param id of the operation, unique: {@code energy-budget}
 * @param summary a few words
 * @param description a sentence or two
 * @param request class of the body, if there is one
 * @param form class of the part {@code request} of a form that also takes a typical year, if it may come so
 * @param response class of the answer
 * @param parameters names of what stands in braces
 * @param table what a table of the answer holds, in a sentence, if the answer comes as text/csv too
 * @param mostPriceMs what the dearest request that keeps to the contract is likely to take [ms of one core]; 0 where nothing is
 *     priced
 */
public record Endpoint(
        String method,
        String path,
        String id,
        String summary,
        String description,
        @Nullable Class<?> request,
        @Nullable Class<?> form,
        Class<?> response,
        List<String> parameters,
        @Nullable String table,
        int mostPriceMs) {
    /** The same, which may also come as a form. */
    public Endpoint withForm(Class<?> newForm) {
        return new Endpoint(
                method, path, id, summary, description, request, newForm, response, parameters, table, mostPriceMs);
    }

    /** The same, whose requests have this price at most. */
    public Endpoint withMostPrice(int newMostMs) {
        return new Endpoint(
                method, path, id, summary, description, request, form, response, parameters, table, newMostMs);
    }

    /** The same, whose answer is also a table. */
    public Endpoint withTable(String newTable) {
        return new Endpoint(
                method, path, id, summary, description, request, form, response, parameters, newTable, mostPriceMs);
    }
}
