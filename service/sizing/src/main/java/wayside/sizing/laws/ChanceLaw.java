package wayside.sizing.laws;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.ShortfallCode;

/** A system runs flat no more often than is accepted. */
public final class ChanceLaw {
    private ChanceLaw() {}

    public static Law of(Derived chance, Derived accepted) {
        return Law.of(LawCode.CHANCE_IS_ACCEPTED, chance, accepted).orElse(Message.of(ShortfallCode.CHANCE_TOO_HIGH));
    }
}
