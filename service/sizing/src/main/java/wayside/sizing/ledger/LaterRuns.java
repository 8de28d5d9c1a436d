package wayside.sizing.ledger;

/**
 * The runs of a weather from one on.
 *
 * @param from place in the row of the first of them
 */
public record LaterRuns(Weather weather, int from) implements Weather {
    @Override
    public int hours() {
        return weather.hours();
    }

    @Override
    public void fill(int run, RunWeather into) {
        weather.fill(from + run, into);
    }
}
