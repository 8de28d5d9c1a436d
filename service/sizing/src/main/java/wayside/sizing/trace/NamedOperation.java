package wayside.sizing.trace;

import java.util.List;

/**
 * A step that no expression holds: the next size of a list, a root, a month of hours, a simulation. Its inputs are
 * complete: who has them and the note can do it again.
 *
 * @param kind what is done
 * @param note in a sentence, how: {@code the smallest rating that is at least I}
 * @param source where it stands
 */
public record NamedOperation(Kind kind, String note, Source source) implements Method {
    /** What is done. The code is what the API prints. */
    public enum Kind {
        /** The smallest entry of a list of sizes that is large enough, or the largest that is small enough. */
        NEXT_SIZE("next-size"),
        /** Between two rows of a table or of points that were given. */
        INTERPOLATION("interpolation"),
        /** The one of several candidates that is best by what the note says. */
        BEST_OF("best-of"),
        /** Where an equation holds, found by narrowing. */
        ROOT("root"),
        /** The hours of a month's kinds of day, added up. */
        MONTH_INTEGRAL("month-integral"),
        /** Where the sun stands, or when it rises and sets, by an almanac. */
        SOLAR_POSITION("solar-position"),
        /** The trip hour by hour in many random weather runs, or the charge of a bank step by step. */
        SIMULATION("simulation");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    public static NamedOperation of(Kind kind, String note, Source source) {
        return new NamedOperation(kind, note, source);
    }

    /** What the operation gave for these inputs. */
    public Derived value(String label, double value, Unit unit, Input... inputs) {
        return new Computed(label, new Quantity(value, unit), this, List.of(inputs));
    }

    public Derived value(String label, double value, Unit unit, List<Input> inputs) {
        return new Computed(label, new Quantity(value, unit), this, inputs);
    }
}
