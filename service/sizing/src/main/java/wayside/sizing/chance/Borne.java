package wayside.sizing.chance;

import java.util.Optional;
import wayside.sizing.endurance.Endurance;
import wayside.sizing.endurance.EnergyBalance;
import wayside.sizing.endurance.Served;
import wayside.sizing.trace.Derived;

/**
 * What all runs of the trip say of a system.
 *
 * @param chance that it runs flat
 * @param whenNew the same chance with a bank as it was bought
 * @param coldHours of a usual trip in which charge is on offer and the cold keeps it out [h]
 * @param served what each load gets
 * @param balance of the average day
 * @param vitalReserveHours how long its vital loads alone would have gone on at the lowest of all runs [h]; none without them
 */
public record Borne(
        Endurance.Chance chance,
        Derived whenNew,
        Derived coldHours,
        Served served,
        EnergyBalance balance,
        Optional<Derived> vitalReserveHours) {
    /** Whether it meets what is asked. */
    boolean meets(ChanceDemands demands) {
        boolean comfortable = demands.comfortShare()
                .flatMap(wanted -> served.comfortShare().map(got -> got.value() >= wanted.value()))
                .orElse(true);
        return chance.value().value() <= demands.mostFlat()
                && comfortable
                && !(demands.mustBalance() && balance.isNegative());
    }
}
