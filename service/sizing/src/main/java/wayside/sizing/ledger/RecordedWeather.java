package wayside.sizing.ledger;

import java.util.stream.IntStream;
import wayside.sizing.brief.Wanted;

/** Weather that was drawn once and is met by many systems, so that they differ by themselves and not by luck. */
public final class RecordedWeather implements Weather {
    private static final int MOST_HOURS = 2_000_000;
    private static final int FEWEST_RUNS = 50;

    private final Weather drawn;
    private final double[][] yields;

    private RecordedWeather(Weather drawn, double[][] yields) {
        this.drawn = drawn;
        this.yields = yields;
    }

    /** The first runs of a weather: as many as wanted, or as fit into about 16 MB. */
    public static RecordedWeather of(Weather weather, int runs) {
        Wanted wanted = Wanted.here();
        double[][] yields = new double[runs(weather, runs)][];
        IntStream.range(0, yields.length).parallel().forEach(run -> {
            wanted.check();
            double[] drawn = new double[weather.hours()];
            weather.fill(run, drawn);
            yields[run] = drawn;
        });
        return new RecordedWeather(weather, yields);
    }

    private static int runs(Weather weather, int wanted) {
        return Math.min(wanted, Math.max(FEWEST_RUNS, MOST_HOURS / weather.hours()));
    }

    /** How many runs it holds. */
    public int runs() {
        return yields.length;
    }

    @Override
    public int hours() {
        return drawn.hours();
    }

    @Override
    public void fill(int run, double[] yieldWhPerW) {
        System.arraycopy(yields[run], 0, yieldWhPerW, 0, hours());
    }

    @Override
    public void fillKinds(int run, int[] kindOfDay) {
        drawn.fillKinds(run, kindOfDay);
    }
}
