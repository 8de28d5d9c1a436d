package wayside.server.http;

import io.javalin.http.Context;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import wayside.server.intake.Front;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;

/** The body of a request: its type and its coding are checked before a byte of it is looked at; its size was while it came. */
final class Body {
    private static final String NO_CODING = "identity";

    private Body() {}

    /** @throws ProblemException for a type that is not JSON, or a content coding */
    static byte[] read(Context context) {
        requireJson(context.contentType());
        requireNoCoding(context);
        return whole(context);
    }

    /** As it came in. */
    static byte[] whole(Context context) {
        return Front.body(context.req().getAttribute(Front.bodyAttribute()));
    }

    private static void requireJson(@Nullable String contentType) {
        String[] parts = contentType == null ? new String[] {""} : contentType.split(";", 2);
        String type = parts[0].strip().toLowerCase(Locale.ROOT);
        String parameters = parts.length > 1 ? parts[1].toLowerCase(Locale.ROOT).replaceAll("[\\s\"]", "") : "";
        boolean otherCharset = parameters.contains("charset=") && !parameters.contains("charset=utf-8");
        if (!type.equals(Json.TYPE) || otherCharset) {
            String received = contentType == null ? "nothing" : shortened(contentType);
            throw new ProblemException(
                    Problem.of(
                            ProblemKind.UNSUPPORTED_MEDIA_TYPE,
                            "Content-Type is " + received + "; send application/json in UTF-8."),
                    Map.of("Accept", Json.TYPE));
        }
    }

    /** @throws ProblemException for a body in any content coding, RFC 9110 section 8.4 */
    static void requireNoCoding(Context context) {
        String codings = String.join(", ", Collections.list(context.req().getHeaders("Content-Encoding")));
        for (String coding : codings.split(",", -1)) {
            if (!coding.isBlank() && !coding.strip().equalsIgnoreCase(NO_CODING)) {
                throw new ProblemException(
                        Problem.of(
                                ProblemKind.UNSUPPORTED_MEDIA_TYPE,
                                "Content-Encoding is " + shortened(codings) + "; send the body as it is."),
                        Map.of("Accept-Encoding", NO_CODING));
            }
        }
    }

    private static String shortened(String text) {
        return text.length() > 80 ? text.substring(0, 80) + "…" : text;
    }
}
