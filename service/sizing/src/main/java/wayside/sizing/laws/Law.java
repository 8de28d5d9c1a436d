package wayside.sizing.laws;

import java.util.Optional;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.Unit;

/**
 * One thing that must hold between the parts of a system: what is asked is at most what is allowed.
 *
 * @param code which
 * @param asked of a part, in the unit of what is allowed
 * @param allowed by it
 * @param margin part of what is allowed that is left, below 0 where the law is broken; -100 or more [share]
 * @param shortfall why it is broken, and what would do
 * @param caution what must be set, watched or known where it holds
 */
public record Law(
        LawCode code,
        Derived asked,
        Derived allowed,
        Derived margin,
        Optional<Shortfall> shortfall,
        Optional<Caution> caution) {
    private static final Expression MARGIN = Expression.definition("m = max(-100, 1 - x / y)");
    private static final Expression NOTHING_ASKED = Expression.definition("m = 1");
    private static final Expression NOTHING_ALLOWED = Expression.definition("m = -100");

    /** Whether it holds. */
    public enum Verdict {
        HOLDS("holds"),
        /** It holds, with something to set or to watch. */
        HOLDS_WITH_CARE("holds-with-care"),
        BROKEN("broken");

        private final String code;

        Verdict(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    /** One that holds. */
    static Law of(LawCode code, Derived asked, Derived allowed) {
        return new Law(code, asked, allowed, margin(code, asked, allowed), Optional.empty(), Optional.empty());
    }

    private static Derived margin(LawCode code, Derived asked, Derived allowed) {
        String label = "law " + code.code() + ": margin";
        if (asked.value() == 0) {
            return NOTHING_ASKED.value(label, Unit.SHARE);
        }
        return allowed.value() > 0
                ? MARGIN.value(label, Unit.SHARE, asked.as("x"), allowed.as("y"))
                : NOTHING_ALLOWED.value(label, Unit.SHARE);
    }

    /** The same, broken where more is asked than is allowed. */
    Law orElse(Message mend) {
        return asked.value() <= allowed.value() ? this : broken(new Shortfall(mend, asked, allowed));
    }

    /** The same, broken. */
    Law broken(Shortfall why) {
        return new Law(code, asked, allowed, margin, Optional.of(why), caution);
    }

    /** The same with something to set or to watch. */
    Law with(Caution care) {
        return new Law(code, asked, allowed, margin, shortfall, Optional.of(care));
    }

    public Verdict verdict() {
        if (shortfall.isPresent()) {
            return Verdict.BROKEN;
        }
        return caution.isPresent() ? Verdict.HOLDS_WITH_CARE : Verdict.HOLDS;
    }

    /** What would mend it, or must be set or watched. */
    public Optional<Message> told() {
        return shortfall.map(Shortfall::message).or(() -> caution.map(Caution::message));
    }
}
