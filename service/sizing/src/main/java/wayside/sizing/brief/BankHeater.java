package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * A heater on a bank, fed by the bank.
 *
 * @param at where it was given
 * @param powerW while it is on [W]
 * @param onBelowC temperature of the bank below which it goes on [C]; a default if absent
 * @param offAboveC temperature of the bank above which it goes off [C], above the other; a default if absent
 */
public record BankHeater(At at, double powerW, OptionalDouble onBelowC, OptionalDouble offAboveC) implements Placed {}
