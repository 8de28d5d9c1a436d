package wayside.sizing.ledger;

/** What a simulation buffers for the run at hand: its weather, its track and the sums. */
final class RunBuffers {
    private final Ledger ledger;
    private final Weather weather;
    private final RunWeather buffer;
    final Track track;
    final Tally tally;

    RunBuffers(Ledger ledger, Weather weather) {
        this.ledger = ledger;
        this.weather = weather;
        buffer = new RunWeather(weather.hours());
        track = new Track(weather.hours());
        tally = new Tally(ledger.bank, ledger.air);
    }

    /**
     * Simulates a run.
     *
     * @param untilFlat whether to stop on the first day that leaves an essential load short
     * @return whether an essential load went short
     */
    boolean simulate(int run, boolean untilFlat) {
        return ledger.run(weather.run(run, buffer), untilFlat, tally, track);
    }
}
