package wayside.sizing.ledger;

/**
 * One system in one month at one station.
 *
 * @param frost whether the month has cold days
 * @param small whether the bank is under 0.7 days of load
 * @param told the predicted chance
 * @param trips how many there were
 * @param flat how many of them ran flat
 */
record ChanceCell(String station, boolean frost, boolean small, double told, double trips, double flat) {}
