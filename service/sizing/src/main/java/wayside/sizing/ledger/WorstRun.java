package wayside.sizing.ledger;

/**
 * The run that ended worst: most essential energy short, else the lowest state of charge; of equals the first.
 *
 * @param run its place in the row
 * @param unmetWh essential energy that went short [Wh]
 * @param flatHours hours in which it did [h]
 * @param firstFlatHour of the trip, from 0; -1 if it never ran flat
 * @param lowestShare lowest state of charge [share]
 * @param solarWh that the sun gave [Wh]
 */
public record WorstRun(int run, double unmetWh, int flatHours, int firstFlatHour, double lowestShare, double solarWh) {
    static final WorstRun NONE = new WorstRun(-1, 0, 0, -1, Double.POSITIVE_INFINITY, 0);

    static WorstRun of(int run, Tally tally, LedgerBank bank) {
        return new WorstRun(
                run,
                tally.unmetEssentialWh,
                tally.flatHours,
                tally.firstFlatHour,
                tally.lowestWh / bank.energyWh,
                tally.solarWh);
    }

    WorstRun orWorse(WorstRun next) {
        boolean worse = next.unmetWh > unmetWh || (next.unmetWh == unmetWh && next.lowestShare < lowestShare);
        return worse ? next : this;
    }
}
