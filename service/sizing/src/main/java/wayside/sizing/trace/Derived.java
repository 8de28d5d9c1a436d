package wayside.sizing.trace;

import java.util.List;

/**
 * A value together with the reason for it. This is the only thing a calculator returns: a number and its explanation
 * can't drift apart when they are one object.
 */
public sealed interface Derived permits Given, Assumed, LookedUp, Computed {
    /** What the value is, in a few plain words: {@code daily energy of the fridge}. */
    String label();

    Quantity quantity();

    Source source();

    default double value() {
        return quantity().value();
    }

    default Unit unit() {
        return quantity().unit();
    }

    /** Names this value as an input of a formula. */
    default Input as(String symbol) {
        return new Input(symbol, this);
    }

    static Given given(String label, double value, Unit unit, String path) {
        return new Given(label, new Quantity(value, unit), path);
    }

    static Assumed assumed(String label, double value, Unit unit, String path, String reason, Source source) {
        return new Assumed(label, new Quantity(value, unit), path, reason, source);
    }

    static LookedUp lookedUp(String label, double value, Unit unit, String table, String row, Source source) {
        return new LookedUp(label, new Quantity(value, unit), table, row, source);
    }

    static Computed computed(String label, double value, Unit unit, Formula formula, Input... inputs) {
        return new Computed(label, new Quantity(value, unit), formula, List.of(inputs));
    }
}
