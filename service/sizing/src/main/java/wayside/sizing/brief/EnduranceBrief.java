package wayside.sizing.brief;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Will this system last on this trip?
 *
 * @param at where it was given
 * @param loads at least one
 * @param initialStateOfCharge at the first midnight [share]; full if absent
 * @param bankPlacement where the bank stands
 * @param acceptedChance chance of running flat that the customer takes, for the questions turned round [share], below 1
 * @param sampling how many runs the trip is simulated in, and in what weather
 */
public record EnduranceBrief(
        At at,
        BuiltSystem system,
        List<Load> loads,
        Trip trip,
        OptionalDouble initialStateOfCharge,
        BankPlacement bankPlacement,
        OptionalDouble acceptedChance,
        Sampling sampling)
        implements Placed {
    public EnduranceBrief {
        loads = List.copyOf(loads);
    }

    /** A question that leaves open all that may be left open. */
    public static EnduranceBrief of(BuiltSystem system, Trip trip, Load... loads) {
        OptionalDouble open = OptionalDouble.empty();
        return new EnduranceBrief(
                At.ROOT,
                system,
                Load.list(At.ROOT.field("loads"), loads),
                trip,
                open,
                BankPlacement.OPEN,
                open,
                Sampling.OPEN);
    }

    /** What a day of it takes. */
    public EnergyBrief energy() {
        return new EnergyBrief(
                system.at(),
                loads,
                OptionalDouble.of(system.busVoltageV()),
                system.inverter(),
                system.standbyW(),
                OptionalDouble.empty(),
                List.of(),
                system.dcLoadsVoltageV(),
                OptionalDouble.empty(),
                system.mains());
    }

    /** The same question on another trip. */
    public EnduranceBrief on(Trip newTrip) {
        return new EnduranceBrief(
                at, system, loads, newTrip, initialStateOfCharge, bankPlacement, acceptedChance, sampling);
    }

    /** The same question in other runs. */
    public EnduranceBrief in(Sampling newSampling) {
        return new EnduranceBrief(
                at, system, loads, trip, initialStateOfCharge, bankPlacement, acceptedChance, newSampling);
    }

    /** The same with another place of the bank. */
    public EnduranceBrief in(BankPlacement placement) {
        return new EnduranceBrief(at, system, loads, trip, initialStateOfCharge, placement, acceptedChance, sampling);
    }
}
