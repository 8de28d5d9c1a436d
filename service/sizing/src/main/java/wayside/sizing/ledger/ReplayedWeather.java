package wayside.sizing.ledger;

import java.util.List;
import wayside.sizing.solar.array.ArrayModel;
import wayside.sizing.solar.array.ArrayOutput;
import wayside.sizing.solar.array.CellTemperature;
import wayside.sizing.solar.epw.EpwReader;
import wayside.sizing.solar.epw.TypicalYear;
import wayside.sizing.solar.epw.YearOnPlane;
import wayside.sizing.solar.plane.Hdkr;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.trace.Unit;

/**
 * The hours of a typical year, replayed. A stay begins on a day of its month that the run draws and goes on through the file;
 * one factor on the light of a whole run stands for years that are not typical.
 */
public final class ReplayedWeather implements Weather {
    private final TypicalYear year;
    private final double[] yearWhPerW = new double[EpwReader.HOURS];
    private final List<Visit> visits;
    private final double lagHours;
    private final double scatter;
    private final long seed;
    private final int hours;

    /**
     * So many nights from some day of a month.
     *
     * @param warmerK the stay's air above the file's [K]
     */
    public record Visit(int month, int nights, double warmerK) {}

    /**
     * A year under an array.
     *
     * @param lagHours with which the bank follows the air [h]
     * @param scatter standard deviation of the factor on a run's yield
     */
    public ReplayedWeather(
            TypicalYear year, ArrayModel array, List<Visit> visits, double lagHours, double scatter, long seed) {
        this.lagHours = lagHours;
        this.year = year;
        this.visits = List.copyOf(visits);
        this.seed = seed;
        this.scatter = scatter;
        hours = Unit.HOURS_PER_DAY * visits.stream().mapToInt(Visit::nights).sum();
        YearOnPlane light = YearOnPlane.of(
                year, array.position().plane(), Hdkr.MODEL, array.albedo().value());
        double left = array.lossFactor().value() * array.controllerEfficiency().value();
        for (int hour = 0; hour < yearWhPerW.length; hour++) {
            double cellC = CellTemperature.cellC(
                    year.airC(hour), light.planeWm2(hour), array.riseKPerWm2().value());
            yearWhPerW[hour] = ArrayOutput.powerW(
                    1, light.enteringWm2(hour), cellC, array.powerCoefficient().value(), left);
        }
    }

    /** What an hour of the file yields for each rated watt [Wh/W]. */
    double yieldWhPerW(int hourOfYear) {
        return yearWhPerW[hourOfYear];
    }

    @Override
    public int hours() {
        return hours;
    }

    @Override
    public void fill(int run, RunWeather into) {
        RunRandom random = new RunRandom(seed, run);
        double factor = SkyScatter.factor(scatter, random.nextNormal());
        int at = 0;
        for (Visit visit : visits) {
            int from = Unit.HOURS_PER_DAY * (SolarCalendar.dayOfYear(visit.month(), 1) - 1 + firstDay(visit, random));
            fill(visit, from, factor, into, at);
            at += Unit.HOURS_PER_DAY * visit.nights();
        }
        into.follow(lagHours);
    }

    /** The hours of the file from one on. */
    private void fill(Visit visit, int from, double factor, RunWeather into, int at) {
        for (int hour = 0; hour < Unit.HOURS_PER_DAY * visit.nights(); hour++) {
            int ofYear = (from + hour) % yearWhPerW.length;
            into.yieldWhPerW[at + hour] = factor * yearWhPerW[ofYear];
            into.boxC[at + hour] = (float) (year.airC(ofYear) + visit.warmerK());
        }
    }

    /** Days of the month before the one that a visit begins on. */
    private static int firstDay(Visit visit, RunRandom random) {
        return (int) (random.nextShare() * SolarCalendar.daysIn(visit.month()));
    }
}
