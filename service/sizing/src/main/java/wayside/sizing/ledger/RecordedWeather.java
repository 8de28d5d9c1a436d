package wayside.sizing.ledger;

import java.util.stream.IntStream;
import wayside.sizing.brief.Wanted;

/** Weather that was drawn once and is met by many systems, so that they differ by themselves and not by luck. */
public final class RecordedWeather implements Weather {
    private static final int MOST_HOURS = 2_000_000;
    private static final int FEWEST_RUNS = 50;

    private final Weather drawn;
    private final RunWeather[] recorded;

    private RecordedWeather(Weather drawn, RunWeather[] recorded) {
        this.drawn = drawn;
        this.recorded = recorded;
    }

    /** The first runs of a weather: as many as wanted, or as fit into about 25 MB. */
    public static RecordedWeather of(Weather weather, int runs) {
        Wanted wanted = Wanted.here();
        RunWeather[] recorded = new RunWeather[runs(weather, runs)];
        IntStream.range(0, recorded.length).parallel().forEach(run -> {
            wanted.check();
            RunWeather drawn = new RunWeather(weather.hours());
            weather.fill(run, drawn);
            recorded[run] = drawn;
        });
        return new RecordedWeather(weather, recorded);
    }

    private static int runs(Weather weather, int wanted) {
        return Math.min(wanted, Math.max(FEWEST_RUNS, MOST_HOURS / weather.hours()));
    }

    /** How many runs it holds. */
    public int runs() {
        return recorded.length;
    }

    @Override
    public int hours() {
        return drawn.hours();
    }

    @Override
    public void fill(int run, RunWeather into) {
        into.set(recorded[run]);
    }

    @Override
    public RunWeather run(int run, RunWeather buffer) {
        return recorded[run];
    }
}
