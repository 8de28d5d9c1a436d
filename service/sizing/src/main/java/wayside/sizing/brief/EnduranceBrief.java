package wayside.sizing.brief;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Will this system last on this trip?
 *
 * @param loads at least one
 * @param initialStateOfCharge at the first midnight [share]; full if absent
 * @param compartmentOffsetC how much warmer than the air the bank stands [K]; outside air if absent
 * @param acceptedChance chance of running flat that the customer takes, for the questions turned round [share], below 1
 * @param sampling how often the trip is lived, and in what weathers
 */
public record EnduranceBrief(
        BuiltSystem system,
        List<Load> loads,
        Trip trip,
        OptionalDouble initialStateOfCharge,
        OptionalDouble compartmentOffsetC,
        OptionalDouble acceptedChance,
        Sampling sampling) {
    public EnduranceBrief {
        loads = List.copyOf(loads);
    }

    /** A question that leaves open all that may be left open. */
    public static EnduranceBrief of(BuiltSystem system, Trip trip, Load... loads) {
        OptionalDouble open = OptionalDouble.empty();
        return new EnduranceBrief(system, List.of(loads), trip, open, open, open, Sampling.OPEN);
    }

    /** The same question on another trip. */
    public EnduranceBrief on(Trip newTrip) {
        return new EnduranceBrief(
                system, loads, newTrip, initialStateOfCharge, compartmentOffsetC, acceptedChance, sampling);
    }

    /** The same question lived otherwise. */
    public EnduranceBrief in(Sampling newSampling) {
        return new EnduranceBrief(
                system, loads, trip, initialStateOfCharge, compartmentOffsetC, acceptedChance, newSampling);
    }

    /** The bank stands warmer than the air by so much [K]. */
    public EnduranceBrief warmerBy(double offsetK) {
        return new EnduranceBrief(
                system, loads, trip, initialStateOfCharge, OptionalDouble.of(offsetK), acceptedChance, sampling);
    }
}
