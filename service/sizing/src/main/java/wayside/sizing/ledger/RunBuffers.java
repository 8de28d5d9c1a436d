package wayside.sizing.ledger;

import java.util.List;

/** What a simulation buffers for the run at hand: its weather, how warm the bank is and what it holds after each hour, and the sums. */
final class RunBuffers {
    private final Ledger ledger;
    private final Weather weather;
    private final RunWeather buffer;
    private RunWeather met;
    final double[] storeWh;
    final CellWarmth cells;
    final Tally tally;

    RunBuffers(Ledger ledger, Weather weather) {
        this(ledger, weather, List.of());
    }

    /** With the loads of each stay, of which is to be known which go short. */
    RunBuffers(Ledger ledger, Weather weather, List<List<LoadHours>> loads) {
        this.ledger = ledger;
        this.weather = weather;
        buffer = new RunWeather(weather.hours());
        met = buffer;
        storeWh = new double[weather.hours()];
        cells = new CellWarmth(weather.hours(), ledger.heater);
        tally = ledger.tally(new Shortage(loads));
    }

    /** Simulates a run. */
    void simulate(int run) {
        met = weather.run(run, buffer);
        ledger.run(met, tally, cells, storeWh);
    }

    /** Whether an essential load goes short in a run, which is followed no further than that. */
    boolean goesFlat(int run) {
        met = weather.run(run, buffer);
        return ledger.goesFlat(met, tally, cells);
    }
}
