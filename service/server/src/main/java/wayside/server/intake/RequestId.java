package wayside.server.intake;

import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Pattern;
import org.eclipse.jetty.http.HttpFields;
import org.jspecify.annotations.Nullable;

/**
 * By which name a request is found again: the one that its client gave it, or one of ours; and its place in a trace, W3C Trace
 * Context (Recommendation, 23 November 2021), section 3.2.
 *
 * @param id in the answer, the log and a problem
 * @param traceId 32 hexadecimal digits, the client's where it sent one
 * @param spanId of this request, 16 hexadecimal digits
 */
public record RequestId(String id, String traceId, String spanId) {
    private static final String ATTRIBUTE = "wayside.request-id";
    private static final String HEADER = "X-Request-Id";
    private static final String TRACE = "traceparent";
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9._-]{1,64}");
    private static final Pattern PARENT =
            Pattern.compile("(?!ff)[0-9a-f]{2}-(?!0{32})[0-9a-f]{32}-(?!0{16})[0-9a-f]{16}-[0-9a-f]{2}(-.*)?");

    static RequestId of(HttpFields fields) {
        String id = fields.get(HEADER);
        String parent = fields.get(TRACE);
        String trace = parent != null && PARENT.matcher(parent).matches() ? parent.substring(3, 35) : hex() + hex();
        return new RequestId(id != null && PLAIN.matcher(id).matches() ? id : hex(), trace, hex());
    }

    /** Name of the attribute of a request that holds it. */
    public static String attribute() {
        return ATTRIBUTE;
    }

    public static RequestId of(@Nullable Object attribute) {
        return attribute instanceof RequestId given ? given : new RequestId("none", "none", "none");
    }

    void mark(HttpFields.Mutable answer) {
        answer.put(HEADER, id);
        answer.put(TRACE, "00-" + traceId + "-" + spanId + "-01");
    }

    private static String hex() {
        return String.format("%016x", ThreadLocalRandom.current().nextLong(1, Long.MAX_VALUE));
    }
}
