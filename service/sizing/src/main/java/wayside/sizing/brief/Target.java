package wayside.sizing.brief;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How sure the customer wants to be.
 *
 * @param at where it was given
 * @param autonomyDays days that a full bank carries the loads with no charging at all
 * @param chanceOfRunningFlat accepted chance that an essential load goes short on the trip [share]
 * @param objective what to choose by among systems that are sure enough
 * @param comfortServedShare of what comfort loads want, how much they must get on the mean of such trips [share]
 * @param mustBalance whether the average day must bring in what it takes
 * @param mayDriveHours hours a day that the customer would drive more, if need be [h]
 * @param bankPricePerWh the customer's own price of a watt-hour of bank, in any currency
 * @param arrayPricePerW the customer's own price of a watt of array, in the same currency
 */
public record Target(
        At at,
        OptionalDouble autonomyDays,
        OptionalDouble chanceOfRunningFlat,
        Optional<Objective> objective,
        OptionalDouble comfortServedShare,
        Optional<Boolean> mustBalance,
        OptionalDouble mayDriveHours,
        OptionalDouble bankPricePerWh,
        OptionalDouble arrayPricePerW)
        implements Placed {
    public static final Target OPEN = new Target(OptionalDouble.empty(), OptionalDouble.empty());

    /** Nothing is said; it would stand there. */
    public static Target open(At at) {
        OptionalDouble open = OptionalDouble.empty();
        return new Target(at, open, open, Optional.empty(), open, Optional.empty(), open, open, open);
    }

    /** A target that leaves the choice among systems open. */
    public Target(OptionalDouble autonomyDays, OptionalDouble chanceOfRunningFlat) {
        this(
                At.ROOT,
                autonomyDays,
                chanceOfRunningFlat,
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** A chance that is accepted. */
    public static Target chance(double share) {
        return new Target(OptionalDouble.empty(), OptionalDouble.of(share));
    }

    /** The same, chosen by something. */
    public Target by(Objective newObjective) {
        return new Target(
                at,
                autonomyDays,
                chanceOfRunningFlat,
                Optional.of(newObjective),
                comfortServedShare,
                mustBalance,
                mayDriveHours,
                bankPricePerWh,
                arrayPricePerW);
    }
}
