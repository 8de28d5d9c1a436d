package wayside.sizing.trace;

import java.util.List;

/** What a sentence is filled with. Figures are not rounded: that is for whoever words the message. */
public sealed interface Parameter {
    String name();

    /** A figure with its unit. */
    record Figure(String name, Quantity quantity) implements Parameter {}

    /** Several figures of one unit, in order. */
    record Figures(String name, List<Quantity> quantities) implements Parameter {
        public Figures {
            quantities = List.copyOf(quantities);
        }
    }

    /** A name that the request gave, or one that is the same in every language: a cable's size. */
    record Text(String name, String text) implements Parameter {}

    /** Something that has words of its own. */
    record Inner(String name, Message message) implements Parameter {}

    static Parameter number(String name, double value, Unit unit) {
        return new Figure(name, new Quantity(value, unit));
    }

    static Parameter number(String name, Derived figure) {
        return new Figure(name, figure.quantity());
    }

    static Parameter numbers(String name, List<Integer> values, Unit unit) {
        return new Figures(
                name, values.stream().map(value -> new Quantity(value, unit)).toList());
    }

    static Parameter text(String name, String text) {
        return new Text(name, text);
    }

    static Parameter inner(String name, Message message) {
        return new Inner(name, message);
    }
}
