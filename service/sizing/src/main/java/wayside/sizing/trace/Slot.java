package wayside.sizing.trace;

import java.util.Optional;

/**
 * A parameter that messages of a code have.
 *
 * @param unit of numbers
 * @param needed whether each of them has it
 */
public record Slot(String name, Kind kind, Optional<Unit> unit, boolean needed) {
    /** What fills it. The code is what the contract prints. */
    public enum Kind {
        NUMBER("number"),
        NUMBERS("numbers"),
        TEXT("text"),
        MESSAGE("message");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    static Slot number(String name, Unit unit) {
        return new Slot(name, Kind.NUMBER, Optional.of(unit), true);
    }

    static Slot numbers(String name, Unit unit) {
        return new Slot(name, Kind.NUMBERS, Optional.of(unit), true);
    }

    static Slot text(String name) {
        return new Slot(name, Kind.TEXT, Optional.empty(), true);
    }

    static Slot message(String name) {
        return new Slot(name, Kind.MESSAGE, Optional.empty(), true);
    }

    /** The same, which not every message has. */
    Slot orNot() {
        return new Slot(name, kind, unit, false);
    }

    boolean takes(Parameter parameter) {
        if (parameter instanceof Parameter.Figure number) {
            return kind == Kind.NUMBER && isUnit(number.quantity());
        }
        if (parameter instanceof Parameter.Figures numbers) {
            return kind == Kind.NUMBERS && numbers.quantities().stream().allMatch(this::isUnit);
        }
        return kind == (parameter instanceof Parameter.Text ? Kind.TEXT : Kind.MESSAGE);
    }

    private boolean isUnit(Quantity quantity) {
        return unit.filter(quantity.unit()::equals).isPresent();
    }
}
