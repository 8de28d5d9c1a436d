package wayside.server.http;

import io.javalin.http.Context;
import jakarta.servlet.MultipartConfigElement;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.Part;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.eclipse.jetty.http.HttpException;
import org.jspecify.annotations.Nullable;
import wayside.server.problem.Fault;
import wayside.server.problem.Faults;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;
import wayside.sizing.solar.epw.EpwFormatException;
import wayside.sizing.solar.epw.EpwReader;
import wayside.sizing.solar.epw.TypicalYear;

/**
 * A form of two parts, RFC 7578: {@code request}, the question in JSON, and {@code typicalYear}, a file in the open EPW format.
 * Parts are kept in memory, never on disk.
 */
final class FormBody {
    static final String TYPE = "multipart/form-data";

    /** A typical year has some 1.6 MB. */
    static final int YEAR_LIMIT_BYTES = 8 << 20;

    private static final String REQUEST = "request";
    private static final String YEAR = "typicalYear";
    private static final byte[] NO_WISHES = {'{', '}'};

    private final Context context;
    private final int requestLimitBytes;

    private FormBody(Context context, int requestLimitBytes) {
        this.context = context;
        this.requestLimitBytes = requestLimitBytes;
    }

    static boolean is(Context context) {
        String type = context.contentType();
        return type != null && type.toLowerCase(Locale.ROOT).startsWith(TYPE);
    }

    /** @throws ProblemException for a body that is no form, in a content coding, or larger than its limit */
    static FormBody of(Context context, int requestLimitBytes) {
        Body.requireNoCoding(context);
        long total = (long) YEAR_LIMIT_BYTES + requestLimitBytes;
        if (context.req().getContentLengthLong() > total) {
            throw tooLarge(total);
        }
        context.req()
                .setAttribute(
                        "org.eclipse.jetty.multipartConfig",
                        new MultipartConfigElement("", YEAR_LIMIT_BYTES, total, YEAR_LIMIT_BYTES));
        FormBody form = new FormBody(context, requestLimitBytes);
        form.refuseUnknownParts();
        return form;
    }

    /** The question; one without a wish when the part is left out. */
    byte[] request() throws IOException {
        Part part = part(REQUEST);
        if (part == null) {
            return NO_WISHES;
        }
        if (part.getSize() > requestLimitBytes) {
            throw tooLarge(requestLimitBytes);
        }
        try (InputStream stream = part.getInputStream()) {
            return stream.readAllBytes();
        }
    }

    /** @throws ProblemException for a file that is missing or no typical year, with the line that shows it */
    TypicalYear year() throws IOException {
        Part part = part(YEAR);
        if (part == null) {
            throw fault(YEAR, "This part is missing.", "nothing");
        }
        // Place names are of any alphabet; what is read of the file is ASCII.
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(part.getInputStream(), StandardCharsets.ISO_8859_1))) {
            return EpwReader.read(lines.lines().iterator());
        } catch (EpwFormatException e) {
            throw fault(YEAR, e.getMessage() + ".", "a file of " + part.getSize() + " bytes");
        }
    }

    private void refuseUnknownParts() {
        try {
            for (Part part : context.req().getParts()) {
                if (part.getName() == null || !Set.of(REQUEST, YEAR).contains(part.getName())) {
                    throw fault("", "The form has a part that is not known here.", "another part");
                }
            }
        } catch (IOException | ServletException | IllegalStateException | HttpException.RuntimeException e) {
            throw unreadable(e);
        }
    }

    private @Nullable Part part(String name) {
        try {
            return context.req().getPart(name);
        } catch (IOException | ServletException | IllegalStateException | HttpException.RuntimeException e) {
            throw unreadable(e);
        }
    }

    private ProblemException unreadable(Exception e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            boolean status413 = cause instanceof HttpException http && http.getCode() == 413;
            String message = cause.getMessage();
            if (status413 || (message != null && message.contains("exceed"))) {
                return tooLarge((long) YEAR_LIMIT_BYTES + requestLimitBytes);
            }
        }
        return new ProblemException(
                Problem.of(ProblemKind.BAD_REQUEST, "The body is no well-formed " + TYPE + "."),
                Map.of("Connection", "close"));
    }

    private static ProblemException fault(String part, String detail, String received) {
        Faults faults = new Faults();
        String pointer = part.isEmpty() ? "" : "/" + part;
        faults.add(
                pointer,
                () -> new Fault(
                        pointer,
                        detail,
                        received,
                        "a part request in JSON and a part typicalYear: a file in the open EPW format, 8 header lines and"
                                + " then the 8760 hours of a year in order",
                        null));
        return new ProblemException(Problem.of(faults));
    }

    private static ProblemException tooLarge(long limitBytes) {
        return new ProblemException(
                Problem.of(ProblemKind.TOO_LARGE, "The body has more than " + limitBytes + " bytes."),
                Map.of("Connection", "close"));
    }
}
