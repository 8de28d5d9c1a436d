package wayside.sizing.laws;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.ShortfallCode;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** What a simulated trip must bear out. */
public final class ChanceLaws {
    private static final Expression DRAIN = Expression.definition("D = max(0, -b)");

    private ChanceLaws() {}

    /** It runs flat no more often than is accepted. */
    public static Law accepted(Derived chance, Derived accepted) {
        return Law.of(LawCode.CHANCE_IS_ACCEPTED, chance, accepted).orElse(Message.of(ShortfallCode.CHANCE_TOO_HIGH));
    }

    /** No run lets a load go short that a life hangs on. */
    public static Law vital(Derived chance) {
        Derived none = none("chance that a vital load may go short", Unit.SHARE, "Somebody's health hangs on it");
        return Law.of(LawCode.VITAL_NEVER_SHORT, chance, none).orElse(Message.of(ShortfallCode.VITAL_GOES_SHORT));
    }

    /** Comfort loads get so much of what they want. */
    public static Law comfort(Derived wantedShare, Derived servedShare) {
        return Law.of(LawCode.COMFORT_IS_SERVED, wantedShare, servedShare)
                .orElse(Message.of(
                        ShortfallCode.COMFORT_TOO_RARE,
                        Parameter.number("served", servedShare),
                        Parameter.number("wanted", wantedShare)));
    }

    /**
     * The average day brings in what it takes, but for a fiftieth.
     *
     * @param dailyWh what is left of it, below 0 where the bank is drawn down [Wh]
     * @param evenWh what counts as even [Wh]
     */
    public static Law balance(Derived dailyWh, Derived evenWh) {
        Derived drain = DRAIN.value("drain of the average day", Unit.WATT_HOUR, dailyWh.as("b"));
        return Law.of(LawCode.DAY_IS_BALANCED, drain, evenWh)
                .orElse(Message.of(ShortfallCode.DAY_NOT_BALANCED, Parameter.number("drain", drain)));
    }

    private static Derived none(String label, Unit unit, String reason) {
        return Derived.convention(label, 0, unit, reason, Source.definition());
    }
}
