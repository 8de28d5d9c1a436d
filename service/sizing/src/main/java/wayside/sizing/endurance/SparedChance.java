package wayside.sizing.endurance;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * What a change takes off a chance, seen in the same runs with it and without: only runs that it turns count.
 *
 * @param low end of the range that it lies in with 95 % confidence; below 0 it may be luck
 * @param high the other end
 */
public record SparedChance(Derived value, Derived low, Derived high) {
    private static final Source PAIRED = Source.paper(
            "Altman, Practical Statistics for Medical Research, Chapman & Hall (1999)",
            "Wald interval of a difference of proportions with matched pairs, as PropCIs 0.3-0 quotes it");
    private static final NamedOperation COUNTED = NamedOperation.of(
            NamedOperation.Kind.SIMULATION, "runs that the change turns, of the same runs", Source.definition());
    private static final Expression SPARED = Expression.definition("D = (b - c) / N");
    private static final Expression LOW =
            Expression.of("D_low = (b - c - 1.96 sqrt(max(0, b + c - (b - c)^2 / N))) / N", PAIRED);
    private static final Expression HIGH =
            Expression.of("D_high = (b - c + 1.96 sqrt(max(0, b + c - (b - c)^2 / N))) / N", PAIRED);

    /**
     * Of the runs that go flat.
     *
     * @param code of the change
     */
    public static SparedChance of(String code, boolean[] without, boolean[] with, Derived runs) {
        int better = 0;
        int worse = 0;
        for (int run = 0; run < without.length; run++) {
            better += without[run] && !with[run] ? 1 : 0;
            worse += with[run] && !without[run] ? 1 : 0;
        }
        Input[] inputs = {
            COUNTED.value("runs that " + code + " keeps from running flat", better, Unit.COUNT, runs.as("N"))
                    .as("b"),
            COUNTED.value("runs that go flat by " + code, worse, Unit.COUNT, runs.as("N"))
                    .as("c"),
            runs.as("N")
        };
        String label = "chance that " + code + " spares";
        return new SparedChance(
                SPARED.value(label, Unit.SHARE, inputs),
                LOW.value(label + ", low", Unit.SHARE, inputs),
                HIGH.value(label + ", high", Unit.SHARE, inputs));
    }
}
