package wayside.sizing.ledger;

import wayside.sizing.solar.array.ArrayDay;
import wayside.sizing.solar.array.ArrayModel;
import wayside.sizing.solar.plane.Extraterrestrial;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.solar.plane.SolarDay;
import wayside.sizing.solar.sky.DailyClearness;
import wayside.sizing.solar.sky.SkyMonth;

/**
 * The sun of one stay. Every day of it has the sun's path of the day whose extraterrestrial irradiation comes closest to the
 * month's mean, and exactly the month's mean extraterrestrial irradiation: a stay has a month, not dates.
 */
public final class StaySky {
    private static final double BRIGHTEST_MEAN = 0.85;

    private final int nights;
    private final double clearness;
    private final double spread;
    private final SkyScatter scatter;
    private final double monthlyWhM2;
    private final ArrayDay day;
    private final double[] airC;
    private final double daySpreadK;
    private final double meanErrorK;

    /**
     * A stay's sun on an array.
     *
     * @param scatter how far a run's sky may lie from the expected one
     */
    public StaySky(double latitude, int month, int nights, SkyMonth sky, ArrayModel array, SkyScatter scatter) {
        this.nights = nights;
        this.scatter = scatter;
        clearness = sky.clearness().value();
        spread = sky.clearnessSpread().value();
        monthlyWhM2 = 1000 * sky.extraterrestrialKwhM2().value();
        SolarDay path = SolarDay.of(
                latitude, representativeDay(latitude, month), array.position().plane());
        airC = sky.airC();
        daySpreadK = sky.daySpreadK().value();
        meanErrorK = sky.meanErrorK().value();
        day = new ArrayDay(path, array, airC);
    }

    private static int representativeDay(double latitude, int month) {
        double mean = Extraterrestrial.monthlyKwhM2(latitude, month);
        SolarDayChoice choice = new SolarDayChoice(Math.toRadians(latitude), mean);
        for (int day = 1; day <= SolarCalendar.daysIn(month); day++) {
            choice.offer(SolarCalendar.dayOfYear(month, day));
        }
        return choice.best();
    }

    public int nights() {
        return nights;
    }

    /**
     * How clear the days of one run are.
     *
     * @param year standard normal: how much brighter this run's sky is than the expected one
     * @param change standard normal: how much more its days differ
     */
    DailyClearness days(double year, double change) {
        double mean = Math.min(BRIGHTEST_MEAN, clearness * scatter.meanFactor(year));
        return switch (scatter.daySpread()) {
            case PLACE -> DailyClearness.scaled(mean, spread * scatter.spreadFactor(change));
            case BENDT -> DailyClearness.unscaled(mean);
        };
    }

    /**
     * How much warmer than the month's mean a day is [K].
     *
     * @param table standard normal: how much warmer this run's air is than the table's
     * @param spell standard normal: how much warmer the day is than the run's mean
     */
    double warmerK(double table, double spell) {
        return meanErrorK * table + daySpreadK * spell;
    }

    /**
     * Fills the 24 hours of a day.
     *
     * @param k clearness of the day
     * @param warmerK the day above the month's mean [K]
     * @param hours how they differ from those of a smooth day
     * @param at first hour of the day in the run
     */
    void fillDay(double k, double warmerK, RoughHours hours, RunWeather run, int at) {
        double[] rough = hours.next(k, day.firstSunny(), day.afterSunny());
        day.fill(k, k * monthlyWhM2, warmerK, rough, run.yieldWhPerW, at);
        for (int hour = 0; hour < airC.length; hour++) {
            run.boxC[at + hour] = (float) (airC[hour] + warmerK);
        }
    }
}
