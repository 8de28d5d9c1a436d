package wayside.server.binding;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.UnitName.Quantity;

/** Says how a figure in one unit becomes one in another. */
final class Conversion {
    /** Differences of temperature, which have no zero to shift. */
    private static final Set<String> DIFFERENCES = Set.of("dailyswing", "warmerby");

    private Conversion() {}

    /** In words, with a comma before; empty where no figure becomes the other. */
    static String words(String stem, UnitName from, UnitName to) {
        if (from.quantity() != to.quantity()) {
            return between(from, to);
        }
        if (from.quantity() == Quantity.TEMPERATURE && !isDifference(stem)) {
            return from.symbol().equals("F") ? ", C = (F - 32) / 1.8" : ", C = K - 273.15";
        }
        return ", " + ratio(from.symbol(), symbol(stem, to), from.factor() / to.factor());
    }

    /** What a field is in; a difference of temperature is in kelvin, whatever its name ends in. */
    static String symbol(String stem, UnitName unit) {
        return isDifference(stem) ? "K" : unit.symbol();
    }

    /** What the figure is multiplied by, and what is added then; null where that does not make it the other. */
    static Suggestion.@Nullable Change change(String stem, UnitName from, UnitName to) {
        if (from.quantity() != to.quantity()) {
            return null;
        }
        double factor = from.factor() / to.factor();
        boolean shifted = from.quantity() == Quantity.TEMPERATURE && !isDifference(stem);
        return new Suggestion.Change(factor, shifted ? (from.symbol().equals("F") ? -32 * factor : -273.15) : 0);
    }

    private static boolean isDifference(String stem) {
        return DIFFERENCES.contains(stem.toLowerCase(Locale.ROOT));
    }

    private static String ratio(String from, String to, double factor) {
        double inverse = 1 / factor;
        return factor < 1 && Math.abs(inverse - Math.rint(inverse)) < 1e-9
                ? plain(inverse) + " " + from + " = 1 " + to
                : "1 " + from + " = " + plain(factor) + " " + to;
    }

    private static String between(UnitName from, UnitName to) {
        String pair = from.quantity() + " " + to.quantity();
        return switch (pair) {
            case "CHARGE ENERGY" -> ", Wh = Ah times the nominal voltage of the battery";
            case "ENERGY CHARGE" -> ", Ah = Wh divided by the nominal voltage of the battery";
            case "CURRENT POWER" -> ", W = A times the voltage";
            case "POWER CURRENT" -> ", A = W divided by the voltage";
            default -> "";
        };
    }

    private static String plain(double value) {
        return new BigDecimal(value)
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }
}
