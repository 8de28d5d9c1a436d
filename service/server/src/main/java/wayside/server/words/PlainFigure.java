package wayside.server.words;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Map;
import wayside.sizing.trace.Quantity;
import wayside.sizing.trace.Unit;

/**
 * A figure as one would say it in English: three digits, none of them after the point from a hundred up, whole degrees, and
 * its unit in words where it is counted.
 */
final class PlainFigure {
    private static final int MOST_DECIMALS = 2;
    private static final Map<Unit, String> SYMBOLS = Map.of(
            Unit.CELSIUS, " °C",
            Unit.DEGREE, "°",
            Unit.SQUARE_MILLIMETRE, " mm²",
            Unit.SQUARE_CENTIMETRE, " cm²",
            Unit.SQUARE_METRE, " m²",
            Unit.SHARE, " %",
            Unit.COUNT, "");
    private static final Map<Unit, String> COUNTED =
            Map.of(Unit.HOUR, " hour", Unit.DAY, " day", Unit.MINUTE, " minute");

    private PlainFigure() {}

    static String of(Quantity quantity) {
        double value = quantity.unit() == Unit.SHARE ? 100 * quantity.value() : quantity.value();
        String number = number(value, decimals(value, quantity.unit()));
        String counted = COUNTED.get(quantity.unit());
        if (counted != null) {
            return number + counted + (number.equals("1") ? "" : "s");
        }
        String symbol = SYMBOLS.get(quantity.unit());
        return number + (symbol == null ? ' ' + quantity.unit().symbol() : symbol);
    }

    /**
     * In a style of its own.
     *
     * @param style {@code month} by name, {@code clock} for a full hour, {@code ratio} for a share as a decimal,
     *     {@code nights} for how many, {@code every} for one in so many, {@code trips} for a chance of so many, {@code up} for a need in whole units
     */
    static String of(Quantity quantity, String style) {
        double value = quantity.value();
        return switch (style) {
            case "month" -> Month.of((int) value).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
            case "clock" -> (value < 10 ? "0" : "") + (int) value + ":00";
            case "ratio" -> number(value, MOST_DECIMALS);
            case "trips" -> trips(value);
            case "nights" -> number(value, 0) + (value == 1 ? " night" : " nights");
            case "every" -> every((int) value);
            case "up" -> of(new Quantity(Math.max(1, Math.ceil(value)), quantity.unit()));
            default -> throw new IllegalArgumentException("No style " + style);
        };
    }

    private static String every(int nights) {
        return switch (nights) {
            case 1 -> "every night";
            case 2 -> "every second night";
            case 3 -> "every third night";
            default -> "one night in " + nights;
        };
    }

    /** Of a hundred trips; the model knows no smaller chance well, they come true two to three times as often as it has them. */
    private static String trips(double chance) {
        if (chance == 0) {
            return "none of the trips that were tried";
        }
        return chance < 0.01 ? "fewer than 1 in 100 such trips" : number(100 * chance, 0) + " in 100 such trips";
    }

    private static int decimals(double value, Unit unit) {
        double size = Math.abs(value);
        return switch (unit) {
            case CELSIUS, KELVIN, DEGREE -> 0;
            case SHARE -> size < 1 ? 1 : 0;
            default -> size >= 100 ? 0 : size >= 10 ? 1 : MOST_DECIMALS;
        };
    }

    /** Thousands parted by commas, no zeros at the end. An answer holds many: no format here. */
    private static String number(double value, int decimals) {
        long factor = decimals == 0 ? 1 : decimals == 1 ? 10 : 100;
        long scaled = Math.round(Math.abs(value) * factor);
        StringBuilder text = new StringBuilder(Long.toString(scaled / factor));
        for (int at = text.length() - 3; at > 0; at -= 3) {
            text.insert(at, ',');
        }
        long rest = scaled % factor;
        if (rest > 0) {
            String digits = Long.toString(factor + rest).substring(1);
            text.append('.').append(digits.endsWith("0") ? digits.substring(0, digits.length() - 1) : digits);
        }
        return value < 0 && scaled > 0 ? "-" + text : text.toString();
    }
}
