package wayside.sizing.ledger;

/** What a simulation buffers for the run at hand: its weather, what the bank holds after each hour, and the sums. */
final class RunBuffers {
    private final Ledger ledger;
    private final Weather weather;
    private final double[] yieldWhPerW;
    private final int[] kindOfDay;
    final double[] storeWh;
    final Tally tally;

    RunBuffers(Ledger ledger, Weather weather) {
        this.ledger = ledger;
        this.weather = weather;
        yieldWhPerW = new double[weather.hours()];
        kindOfDay = new int[weather.days()];
        storeWh = new double[weather.hours()];
        tally = new Tally(ledger.bank);
    }

    /**
     * Simulates a run.
     *
     * @param untilFlat whether to stop on the first day that leaves an essential load short
     * @return whether an essential load went short
     */
    boolean simulate(int run, boolean untilFlat) {
        weather.fill(run, yieldWhPerW);
        weather.fillKinds(run, kindOfDay);
        return ledger.run(yieldWhPerW, kindOfDay, untilFlat, tally, storeWh);
    }
}
