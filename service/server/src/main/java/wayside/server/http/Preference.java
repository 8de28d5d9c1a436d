package wayside.server.http;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a client would rather have, RFC 7240. A preference that is not known here changes nothing. */
final class Preference {
    private Preference() {}

    /** Whether the client would rather have the answer without its derivation. */
    static boolean isMinimal(Context context) {
        List<String> headers = Collections.list(context.req().getHeaders("Prefer"));
        return find(headers, "return").filter("minimal"::equalsIgnoreCase).isPresent();
    }

    /** Says that the answer would differ by preference, and whether it was minded. */
    static void mark(Context context, boolean minimal) {
        context.res().addHeader("Vary", "Prefer");
        if (minimal) {
            context.header("Preference-Applied", "return=minimal");
        }
    }

    /** The value of a preference: where it is named more than once, the first counts. */
    static Optional<String> find(List<String> headers, String name) {
        return headers.stream()
                .flatMap(header -> parts(header, ',').stream())
                .map(preference -> parts(preference, ';').get(0).split("=", 2))
                .filter(pair -> pair[0].strip().toLowerCase(Locale.ROOT).equals(name))
                .findFirst()
                .map(pair -> pair.length == 2 ? unquoted(pair[1].strip()) : "");
    }

    /** A separator within a quoted string parts nothing. */
    private static List<String> parts(String text, char separator) {
        List<String> parts = new ArrayList<>();
        boolean quoted = false;
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\\' && quoted) {
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                parts.add(text.substring(start, i));
                start = i + 1;
            }
        }
        parts.add(text.substring(start));
        return parts;
    }

    private static String unquoted(String value) {
        boolean quoted = value.length() > 1 && value.startsWith("\"") && value.endsWith("\"");
        return quoted ? value.substring(1, value.length() - 1).replaceAll("\\\\(.)", "$1") : value;
    }
}
