package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * How sure the customer wants to be.
 *
 * @param autonomyDays days that a full bank carries the loads with no charging at all
 * @param chanceOfRunningFlat accepted chance that an essential load goes short on the trip [share]
 */
public record Target(OptionalDouble autonomyDays, OptionalDouble chanceOfRunningFlat) {
    public static final Target OPEN = new Target(OptionalDouble.empty(), OptionalDouble.empty());
}
