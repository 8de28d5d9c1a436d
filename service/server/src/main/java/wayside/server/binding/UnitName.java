package wayside.server.binding;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A unit as it stands in the name of a field: those of the contract, and those that people write instead.
 *
 * @param written as it ends a name, in small letters
 * @param symbol as it stands in a sentence
 * @param quantity that it measures
 * @param factor how many of the quantity's own unit it is
 */
record UnitName(String written, String symbol, Quantity quantity, double factor) {
    /** What is measured; units of one quantity are multiples of each other, temperatures aside. */
    enum Quantity {
        POWER,
        ENERGY,
        CHARGE,
        VOLTAGE,
        CURRENT,
        RESISTANCE,
        AREA,
        LENGTH,
        MASS,
        VOLUME,
        TEMPERATURE,
        TIME,
        ANGLE,
        SHARE,
        IRRADIATION
    }

    private static final List<UnitName> ALL = List.of(
            new UnitName("kwhm2", "kWh/m2", Quantity.IRRADIATION, 1),
            new UnitName("whm2", "Wh/m2", Quantity.IRRADIATION, 0.001),
            new UnitName("mjm2", "MJ/m2", Quantity.IRRADIATION, 1 / 3.6),
            new UnitName("mwh", "MWh", Quantity.ENERGY, 1e6),
            new UnitName("kwh", "kWh", Quantity.ENERGY, 1e3),
            new UnitName("wh", "Wh", Quantity.ENERGY, 1),
            new UnitName("kj", "kJ", Quantity.ENERGY, 1 / 3.6),
            new UnitName("mw", "MW", Quantity.POWER, 1e6),
            new UnitName("kw", "kW", Quantity.POWER, 1e3),
            new UnitName("w", "W", Quantity.POWER, 1),
            new UnitName("mah", "mAh", Quantity.CHARGE, 0.001),
            new UnitName("ah", "Ah", Quantity.CHARGE, 1),
            new UnitName("ma", "mA", Quantity.CURRENT, 0.001),
            new UnitName("ka", "kA", Quantity.CURRENT, 1000),
            new UnitName("a", "A", Quantity.CURRENT, 1),
            new UnitName("mv", "mV", Quantity.VOLTAGE, 0.001),
            new UnitName("kv", "kV", Quantity.VOLTAGE, 1000),
            new UnitName("v", "V", Quantity.VOLTAGE, 1),
            new UnitName("ohm", "ohm", Quantity.RESISTANCE, 1),
            new UnitName("mm2", "mm2", Quantity.AREA, 1e-6),
            new UnitName("m2", "m2", Quantity.AREA, 1),
            new UnitName("km", "km", Quantity.LENGTH, 1000),
            new UnitName("cm", "cm", Quantity.LENGTH, 0.01),
            new UnitName("mm", "mm", Quantity.LENGTH, 0.001),
            new UnitName("m", "m", Quantity.LENGTH, 1),
            new UnitName("feet", "ft", Quantity.LENGTH, 0.3048),
            new UnitName("ft", "ft", Quantity.LENGTH, 0.3048),
            new UnitName("inches", "in", Quantity.LENGTH, 0.0254),
            new UnitName("in", "in", Quantity.LENGTH, 0.0254),
            new UnitName("kg", "kg", Quantity.MASS, 1),
            new UnitName("g", "g", Quantity.MASS, 0.001),
            new UnitName("lbs", "lb", Quantity.MASS, 0.45359237),
            new UnitName("lb", "lb", Quantity.MASS, 0.45359237),
            new UnitName("l", "l", Quantity.VOLUME, 1),
            new UnitName("c", "C", Quantity.TEMPERATURE, 1),
            new UnitName("f", "F", Quantity.TEMPERATURE, 1 / 1.8),
            new UnitName("k", "K", Quantity.TEMPERATURE, 1),
            new UnitName("days", "d", Quantity.TIME, 24),
            new UnitName("hours", "h", Quantity.TIME, 1),
            new UnitName("h", "h", Quantity.TIME, 1),
            new UnitName("minutes", "min", Quantity.TIME, 1 / 60.0),
            new UnitName("min", "min", Quantity.TIME, 1 / 60.0),
            new UnitName("seconds", "s", Quantity.TIME, 1 / 3600.0),
            new UnitName("degrees", "degrees", Quantity.ANGLE, 1),
            new UnitName("deg", "degrees", Quantity.ANGLE, 1),
            new UnitName("radians", "radians", Quantity.ANGLE, 57.29577951308232),
            new UnitName("rad", "radians", Quantity.ANGLE, 57.29577951308232),
            new UnitName("percent", "percent", Quantity.SHARE, 0.01),
            new UnitName("pct", "percent", Quantity.SHARE, 0.01),
            new UnitName("share", "share", Quantity.SHARE, 1));

    /** The only pair that differs by the size of its letters alone. */
    private static final UnitName MILLIWATT = new UnitName("mw", "mW", Quantity.POWER, 0.001);

    private static final List<String> WITHIN = List.of("hours", "minutes", "seconds", "days");

    /** A name without its unit, and the unit: {@code power} and W of {@code powerW}. */
    record Parted(String stem, UnitName unit, boolean clear) {}

    /** The unit that a name of the contract has. */
    static Optional<Parted> of(String name) {
        return all(name).stream().filter(Parted::clear).findFirst();
    }

    /**
     * Every way to read a unit in a name, the longest unit first. It is clear where a capital letter begins it, and a guess
     * in {@code powerkw}.
     */
    static List<Parted> all(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        List<Parted> found = ALL.stream()
                .filter(unit -> small.endsWith(unit.written())
                        && small.length() > unit.written().length())
                .sorted((a, b) -> b.written().length() - a.written().length())
                .map(unit -> atTheEnd(name, unit))
                .toList();
        return found.stream().anyMatch(Parted::clear) ? found : withTime(name, found);
    }

    boolean isSameAs(UnitName other) {
        return quantity == other.quantity && symbol.equals(other.symbol);
    }

    private static Parted atTheEnd(String name, UnitName unit) {
        int start = name.length() - unit.written().length();
        char before = name.charAt(start - 1);
        boolean clear = Character.isUpperCase(name.charAt(start)) && !Character.isUpperCase(before);
        boolean milliwatt = unit.written().equals("mw") && name.charAt(start) == 'm';
        return new Parted(name.substring(0, start), milliwatt ? MILLIWATT : unit, clear);
    }

    /** Hours and their like also stand within a name: {@code drivingHoursPerDay}. */
    private static List<Parted> withTime(String name, List<Parted> otherwise) {
        for (String word : WITHIN) {
            String capital = Character.toUpperCase(word.charAt(0)) + word.substring(1);
            int at = name.startsWith(word) ? 0 : name.indexOf(capital);
            if (at >= 0 && name.length() > word.length()) {
                String stem = name.substring(0, at) + name.substring(at + word.length());
                return ALL.stream()
                        .filter(unit -> unit.written().equals(word))
                        .map(unit -> new Parted(stem, unit, true))
                        .toList();
            }
        }
        return otherwise;
    }
}
