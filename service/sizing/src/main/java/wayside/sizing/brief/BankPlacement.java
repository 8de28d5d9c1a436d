package wayside.sizing.brief;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where the bank stands.
 *
 * @param at where it was given
 * @param where in the vehicle; outside if absent
 * @param warmerByK how much warmer than the air it is there [K]; by where it stands if absent
 * @param lagHours how slowly it follows the air [h], 0 for at once; from its box, else a default, if absent
 * @param box what it weighs and stands in, which makes the lag
 * @param heater that keeps it warm, if there is one
 */
public record BankPlacement(
        At at,
        Optional<Compartment> where,
        OptionalDouble warmerByK,
        OptionalDouble lagHours,
        Optional<BankBox> box,
        Optional<BankHeater> heater)
        implements Placed {
    /** Outside, as far as anybody said. */
    public static final BankPlacement OPEN = open(At.ROOT.field("place"));

    /** Nothing is said; it would stand there. */
    public static BankPlacement open(At at) {
        return new BankPlacement(
                at,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Warmer than the air by so much [K]. */
    public static BankPlacement warmerBy(double warmerByK) {
        return new BankPlacement(
                OPEN.at, OPEN.where, OptionalDouble.of(warmerByK), OPEN.lagHours, OPEN.box, OPEN.heater);
    }

    /** The same, following the air with another lag [h]. */
    public BankPlacement lagging(double newLagHours) {
        return new BankPlacement(at, where, warmerByK, OptionalDouble.of(newLagHours), Optional.empty(), heater);
    }

    /** The same bank in its box, in another part of the vehicle and as warm as it is there. */
    public BankPlacement in(Compartment other) {
        return new BankPlacement(at, Optional.of(other), OptionalDouble.empty(), lagHours, box, heater);
    }

    /** The same in another box. */
    public BankPlacement boxed(BankBox newBox) {
        return new BankPlacement(at, where, warmerByK, OptionalDouble.empty(), Optional.of(newBox), heater);
    }

    /** The same with a heater of a power [W] that goes on and off as heaters usually do. */
    public BankPlacement heated(double powerW) {
        return heated(new BankHeater(at.field("heater"), powerW, OptionalDouble.empty(), OptionalDouble.empty()));
    }

    public BankPlacement heated(BankHeater newHeater) {
        return new BankPlacement(at, where, warmerByK, lagHours, box, Optional.of(newHeater));
    }
}
