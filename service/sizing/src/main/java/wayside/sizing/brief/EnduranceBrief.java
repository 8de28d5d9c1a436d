package wayside.sizing.brief;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Will this system last on this trip?
 *
 * @param loads at least one
 * @param initialStateOfCharge at the first midnight [share]; full if absent
 * @param skyUncertainty standard deviation of the factor that stands for the year and for what is not known of the place
 *     [share]; by where the sky comes from if absent
 * @param compartmentOffsetC how much warmer than the air the bank stands [K]; outside air if absent
 * @param acceptedChance chance of running flat that the customer takes, for the questions turned round [share]
 * @param runs how often the trip is lived
 * @param seed of the weather
 */
public record EnduranceBrief(
        BuiltSystem system,
        List<Load> loads,
        Trip trip,
        OptionalDouble initialStateOfCharge,
        OptionalDouble skyUncertainty,
        OptionalDouble compartmentOffsetC,
        OptionalDouble acceptedChance,
        OptionalInt runs,
        long seed) {
    public EnduranceBrief {
        loads = List.copyOf(loads);
    }

    /** A question that leaves open all that may be left open. */
    public static EnduranceBrief of(BuiltSystem system, Trip trip, Load... loads) {
        return new EnduranceBrief(
                system,
                List.of(loads),
                trip,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                0);
    }

    /** The same question on another trip. */
    public EnduranceBrief on(Trip newTrip) {
        return new EnduranceBrief(
                system,
                loads,
                newTrip,
                initialStateOfCharge,
                skyUncertainty,
                compartmentOffsetC,
                acceptedChance,
                runs,
                seed);
    }

    public EnduranceBrief running(int newRuns, long newSeed) {
        return new EnduranceBrief(
                system,
                loads,
                trip,
                initialStateOfCharge,
                skyUncertainty,
                compartmentOffsetC,
                acceptedChance,
                OptionalInt.of(newRuns),
                newSeed);
    }

    /** The bank stands warmer than the air by so much [K]. */
    public EnduranceBrief warmerBy(double offsetK) {
        return new EnduranceBrief(
                system,
                loads,
                trip,
                initialStateOfCharge,
                skyUncertainty,
                OptionalDouble.of(offsetK),
                acceptedChance,
                runs,
                seed);
    }
}
