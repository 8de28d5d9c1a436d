package wayside.sizing.ledger;

import java.util.List;
import wayside.sizing.solar.ArrayModel;
import wayside.sizing.solar.ArrayOutput;
import wayside.sizing.solar.CellTemperature;
import wayside.sizing.solar.Hdkr;
import wayside.sizing.solar.SolarCalendar;
import wayside.sizing.solar.epw.EpwReader;
import wayside.sizing.solar.epw.TypicalYear;
import wayside.sizing.solar.epw.YearOnPlane;
import wayside.sizing.trace.Unit;

/**
 * The hours of a typical year, replayed. A stay begins on a day of its month that the run draws and goes on through the file;
 * one factor on the light of a whole run stands for years that are not typical.
 */
public final class ReplayedWeather implements Weather {
    private final double[] yearWhPerW = new double[EpwReader.HOURS];
    private final List<Visit> visits;
    private final double scatter;
    private final long seed;
    private final int hours;

    /** So many nights from some day of a month. */
    public record Visit(int month, int nights) {
        /**
         * Air of the days that the visit may meet, from the first of the month on: its kinds of day.
         *
         * @return [C] by day and hour
         */
        public double[][] airC(TypicalYear year) {
            int first = Unit.HOURS_PER_DAY * (SolarCalendar.dayOfYear(month, 1) - 1);
            double[][] airC = new double[SolarCalendar.daysIn(month) + nights - 1][Unit.HOURS_PER_DAY];
            for (int day = 0; day < airC.length; day++) {
                for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
                    airC[day][hour] = year.airC((first + day * Unit.HOURS_PER_DAY + hour) % EpwReader.HOURS);
                }
            }
            return airC;
        }
    }

    /**
     * A year under an array.
     *
     * @param scatter standard deviation of the factor on a run's yield
     */
    public ReplayedWeather(TypicalYear year, ArrayModel array, List<Visit> visits, double scatter, long seed) {
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

    @Override
    public int hours() {
        return hours;
    }

    @Override
    public void fill(int run, double[] yieldWhPerW) {
        RunRandom random = new RunRandom(seed, run);
        double factor = SkyScatter.factor(scatter, random.nextNormal());
        int at = 0;
        for (Visit visit : visits) {
            int from = Unit.HOURS_PER_DAY * (SolarCalendar.dayOfYear(visit.month(), 1) - 1 + firstDay(visit, random));
            for (int hour = 0; hour < Unit.HOURS_PER_DAY * visit.nights(); hour++) {
                yieldWhPerW[at++] = factor * yearWhPerW[(from + hour) % yearWhPerW.length];
            }
        }
    }

    @Override
    public void fillKinds(int run, int[] kindOfDay) {
        RunRandom random = new RunRandom(seed, run);
        random.nextNormal(); // the factor of fill, which is drawn before the days
        int at = 0;
        for (Visit visit : visits) {
            int first = firstDay(visit, random);
            for (int night = 0; night < visit.nights(); night++) {
                kindOfDay[at++] = first + night;
            }
        }
    }

    /** Days of the month before the one that a visit begins on. */
    private static int firstDay(Visit visit, RunRandom random) {
        return (int) (random.nextShare() * SolarCalendar.daysIn(visit.month()));
    }
}
