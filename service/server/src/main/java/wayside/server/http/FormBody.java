package wayside.server.http;

import io.javalin.http.Context;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import wayside.server.problem.Fault;
import wayside.server.problem.FaultCode;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;
import wayside.sizing.solar.epw.EpwFormatException;
import wayside.sizing.solar.epw.EpwReader;
import wayside.sizing.solar.epw.TypicalYear;

/**
 * A form of two parts: {@code request}, the question in JSON, and {@code typicalYear}, a file in the open EPW format. It is
 * kept in memory, never on disk.
 */
final class FormBody {
    static final String TYPE = "multipart/form-data";

    /** A typical year has 0.75 to 1.6 MB. */
    static final int YEAR_LIMIT_BYTES = 3 << 20;

    private static final String REQUEST = "request";
    private static final String YEAR = "typicalYear";
    private static final byte[] NO_WISHES = {'{', '}'};
    private static final byte[] UTF_8_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final byte[] request;
    private final @Nullable TypicalYear year;
    private final List<Fault> faults = new ArrayList<>();

    private FormBody(FormParts parts, int requestLimitBytes) {
        byte[] question = parts.find(REQUEST);
        request = question == null ? NO_WISHES : question;
        require(request.length, requestLimitBytes, "part request");
        if (parts.names().stream().anyMatch(name -> !Set.of(REQUEST, YEAR).contains(name))) {
            fault("", "The form has a part that is not known here.", "another part");
        }
        parts.doubled().forEach(name -> fault("", "The form has more than one part " + name + ".", "two of one name"));
        byte[] file = parts.find(YEAR);
        if (file == null) {
            fault("/" + YEAR, "This part is missing.", "nothing");
        } else {
            require(file.length, YEAR_LIMIT_BYTES, "file typicalYear");
        }
        year = file == null || !parts.doubled().isEmpty() ? null : read(file);
    }

    static boolean is(Context context) {
        String type = context.contentType();
        return type != null && type.toLowerCase(Locale.ROOT).startsWith(TYPE);
    }

    /** @throws ProblemException for a body that is no form, in a content coding, or with a part beyond its limit */
    static FormBody of(Context context, int requestLimitBytes) {
        Body.requireNoCoding(context);
        FormParts parts;
        try {
            parts = FormParts.of(Body.whole(context), context.contentType());
        } catch (IllegalArgumentException e) {
            throw new ProblemException(Problem.of(ProblemKind.BAD_REQUEST, "The body is no well-formed " + TYPE + "."));
        }
        return new FormBody(parts, requestLimitBytes);
    }

    /** The question; one without a wish when the part is left out. */
    byte[] request() {
        return request;
    }

    /** What is wrong with the form and its file: told with what is wrong with the question. */
    List<Fault> faults() {
        return faults;
    }

    /** The year of a form without fault. */
    TypicalYear year() {
        if (year == null) {
            throw new IllegalStateException("A form with faults has no year");
        }
        return year;
    }

    private @Nullable TypicalYear read(byte[] file) {
        if (isUtf16(file)) {
            fault("/" + YEAR, "This file is in UTF-16; save it as plain text (UTF-8).", received(file));
            return null;
        }
        int begin = startsWith(file, UTF_8_MARK) ? UTF_8_MARK.length : 0;
        // Place names are of any alphabet; what is read of the file is ASCII.
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                new ByteArrayInputStream(file, begin, file.length - begin), StandardCharsets.ISO_8859_1))) {
            return EpwReader.read(lines.lines().iterator());
        } catch (EpwFormatException e) {
            fault("/" + YEAR, e.getMessage() + ".", received(file));
        } catch (IOException e) {
            throw new IllegalStateException("Reading from memory does not fail", e);
        }
        return null;
    }

    /** By its byte order mark, or by the zero byte beside its first letter. */
    private static boolean isUtf16(byte[] file) {
        return startsWith(file, new byte[] {(byte) 0xFF, (byte) 0xFE})
                || startsWith(file, new byte[] {(byte) 0xFE, (byte) 0xFF})
                || startsWith(file, new byte[] {'L', 0})
                || startsWith(file, new byte[] {0, 'L'});
    }

    private static boolean startsWith(byte[] file, byte[] beginning) {
        return file.length >= beginning.length
                && Arrays.equals(file, 0, beginning.length, beginning, 0, beginning.length);
    }

    private static String received(byte[] file) {
        return "a file of " + file.length + " bytes";
    }

    private void fault(String pointer, String detail, String received) {
        faults.add(Fault.of(pointer, FaultCode.UNREADABLE_PART, detail)
                .received(received, null)
                .accepted("a part request in JSON and a part typicalYear: a file in the open EPW format, 8 header lines"
                        + " and then the 8760 hours of a year in order")
                .done());
    }

    private static void require(int bytes, int limitBytes, String what) {
        if (bytes > limitBytes) {
            throw new ProblemException(
                    Problem.of(ProblemKind.TOO_LARGE, "The " + what + " has more than " + limitBytes + " bytes."));
        }
    }
}
