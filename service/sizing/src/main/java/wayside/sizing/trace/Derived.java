package wayside.sizing.trace;

import java.util.Optional;

/**
 * A value together with the way to it. This is the only thing a calculator returns: a number and its explanation can't
 * drift apart when the explanation is what was evaluated.
 */
public sealed interface Derived permits Given, Default, Convention, LookedUp, Computed {
    /** What the value is, in a few plain words: {@code fridge: daily energy}. */
    String label();

    Quantity quantity();

    Source source();

    default double value() {
        return quantity().value();
    }

    default Unit unit() {
        return quantity().unit();
    }

    /** Names this value as an input of an expression or operation. */
    default Input as(String symbol) {
        return new Input(symbol, this);
    }

    static Given given(String label, double value, Unit unit, String field) {
        return new Given(label, new Quantity(value, unit), field);
    }

    static Default byDefault(String label, double value, Unit unit, String field, String reason, Source source) {
        return new Default(label, new Quantity(value, unit), field, reason, source);
    }

    static Convention convention(String label, double value, Unit unit, String reason, Source source) {
        return new Convention(label, new Quantity(value, unit), reason, source);
    }

    /** A value that the request left open: a default where a field of it could have said otherwise, else a convention. */
    static Derived leftOpen(
            String label, double value, Unit unit, Optional<String> field, String reason, Source source) {
        return field.<Derived>map(open -> byDefault(label, value, unit, open, reason, source))
                .orElseGet(() -> convention(label, value, unit, reason, source));
    }

    static LookedUp lookedUp(String label, double value, Unit unit, String table, String row, Source source) {
        return new LookedUp(label, new Quantity(value, unit), table, row, source);
    }
}
