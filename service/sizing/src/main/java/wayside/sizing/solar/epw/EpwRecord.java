package wayside.sizing.solar.epw;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** One line of comma-separated cells, with errors that name the line, the cell, what was received and what is accepted. */
final class EpwRecord {
    private static final int LONGEST_QUOTE = 40;
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");

    private final int line;
    private final List<String> cells = new ArrayList<>();

    EpwRecord(int line, String text) {
        this.line = line;
        int from = 0;
        for (int comma = text.indexOf(','); comma >= 0; comma = text.indexOf(',', from)) {
            cells.add(text.substring(from, comma).strip());
            from = comma + 1;
        }
        cells.add(text.substring(from).strip());
    }

    String text(int cell) {
        return cell < cells.size() ? cells.get(cell) : "";
    }

    double number(int cell, String name, double low, double high) {
        String text = text(cell);
        double value = parse(text);
        // Written so that NaN is refused too.
        if (!(value >= low && value <= high)) {
            throw new EpwFormatException(
                    line,
                    String.format(
                            Locale.ROOT,
                            "%s (cell %d) must be a decimal number from %s to %s; received %s",
                            name,
                            cell + 1,
                            plain(low),
                            plain(high),
                            quoted(text)));
        }
        return value;
    }

    /** The number, or NaN where the file says that it is missing. */
    double numberOrMissing(int cell, String name, double low, double high, double missing) {
        return parse(text(cell)) >= missing ? Double.NaN : number(cell, name, low, high);
    }

    int whole(int cell, String name, int low, int high) {
        double value = number(cell, name, low, high);
        if (value != Math.rint(value)) {
            throw new EpwFormatException(
                    line, name + " (cell " + (cell + 1) + ") must be a whole number; received " + quoted(text(cell)));
        }
        return (int) value;
    }

    /** At most a few characters of what was received. */
    static String quoted(String text) {
        String shown = text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "...";
        return '"' + shown.replaceAll("\\p{Cntrl}", "?") + '"';
    }

    /** A decimal number; NaN for anything else, also for what only Java takes for one: 0x1p3, 300f, 1d. */
    private static double parse(String text) {
        return DECIMAL.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
    }

    private static String plain(double value) {
        return Long.toString((long) value);
    }
}
