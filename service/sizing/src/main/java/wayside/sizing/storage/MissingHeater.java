package wayside.sizing.storage;

import java.util.Optional;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * A heater that would keep a bank out of the frost.
 *
 * @param placement of the bank, with it
 * @param powerW while it is on, in steps of 10 W [W]
 * @param dayWh what it would take on a cold day [Wh]
 */
public record MissingHeater(BankPlacement placement, Derived powerW, Derived dayWh) {
    private static final Expression POWER = Expression.commonPractice("P = 10 max(1, ceil(L (T_off - T) / 10))")
            .with("T_off", BankHeating.OFF_ABOVE_C, Unit.CELSIUS);

    /** A bank that loses its warmth faster than this cannot be kept warm. */
    private static final double SHORTEST_LAG_HOURS = 0.01;

    /**
     * The heater of a bank that has none; none helps a bank without a lag.
     *
     * @param coldDayC mean of the unheated bank on a cold day [C]
     */
    public static Optional<MissingHeater> of(BankPlace place, Derived coldDayC) {
        if (place.heating().isPresent() || place.lagHours().value() < SHORTEST_LAG_HOURS) {
            return Optional.empty();
        }
        BankPlacement asked = place.placement();
        Derived power = POWER.value(
                "heater of the bank that would do",
                Unit.WATT,
                BankLag.lossWPerK(asked, place.lagHours()).as("L"),
                coldDayC.as("T"));
        BankPlacement heated = asked.heated(power.value());
        Derived day = BankPlace.of(heated).heating().orElseThrow().dayWh("what it would take on a cold day", coldDayC);
        return Optional.of(new MissingHeater(heated, power, day));
    }
}
