package wayside.sizing.endurance;

import java.util.Optional;
import wayside.sizing.journey.Journey;
import wayside.sizing.ledger.Outcome;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * Whether the average day brings in what it takes.
 *
 * @param dailyWh what comes in on it or could, less what is wanted and lost [Wh]; below 0 it lives off the bank
 * @param evenWh less than this is even [Wh]
 * @param emptyAfterNights when a full bank would be empty at that; none where the day brings in what it takes
 */
public record EnergyBalance(Derived dailyWh, Derived evenWh, Optional<Derived> emptyAfterNights) {
    /** Less than this of what a day takes is even. */
    private static final double NOTABLE_SHARE = 0.02;

    private static final Expression EVEN =
            Expression.commonPractice("b_even = x E_d").with("x", NOTABLE_SHARE, Unit.SHARE);
    private static final Expression EMPTY = Expression.definition("n = E a f_use eta_d / max(0.001, -b)");

    /**
     * Of a simulated trip.
     *
     * @param nominalWh rated energy of the bank [Wh]
     * @param ageShare what age has left of it
     */
    public static EnergyBalance of(
            Journey journey,
            Outcome outcome,
            ChemistryData data,
            Derived nominalWh,
            Derived ageShare,
            SimulatedFigures figures) {
        Derived daily = figures.step(
                "balance of the average day",
                outcome.balanceWh() / journey.trip().nights(),
                Unit.WATT_HOUR,
                "what sun, engine and hookup offer and the cold does not keep out, less what is wanted and lost in the bank, by"
                        + " the day; mean of the N runs");
        Derived even = EVEN.value(
                "balance of the average day that counts as even",
                Unit.WATT_HOUR,
                journey.highestDemand().budget().dailyTotalWh().as("E_d"));
        return new EnergyBalance(
                daily,
                even,
                daily.value() < -even.value()
                        ? Optional.of(EMPTY.value(
                                "nights after which a full bank would be empty",
                                Unit.DAY,
                                nominalWh.as("E"),
                                ageShare.as("a"),
                                data.usableShare().as("f_use"),
                                data.dischargeEfficiency().as("eta_d"),
                                daily.as("b")))
                        : Optional.empty());
    }

    /** Whether it is drawn down day after day, as yes or no. */
    public static boolean isNegative(Journey journey, Outcome outcome) {
        double dayWh = journey.highestDemand().budget().dailyTotalWh().value();
        return outcome.balanceWh() < -NOTABLE_SHARE * dayWh * journey.trip().nights();
    }

    /** Whether the bank is drawn down day after day. */
    public boolean isNegative() {
        return emptyAfterNights.isPresent();
    }
}
