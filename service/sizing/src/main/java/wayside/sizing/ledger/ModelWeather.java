package wayside.sizing.ledger;

import java.util.List;
import wayside.sizing.solar.sky.DailyClearness;
import wayside.sizing.trace.Unit;

/**
 * Weather drawn day by day from what a month is like: clearness by Bendt's distribution in Herzog's form, successive days alike
 * as {@link DayChain} makes them, and one factor each on mean and spread for the whole run. Temperature runs beside it, day by day as
 * {@link TemperatureChain} makes it, and the hours of a day are as rough as {@link RoughHours} has them.
 */
public final class ModelWeather implements Weather {
    private final List<StaySky> stays;
    private final double lagHours;
    private final long seed;
    private final int hours;

    /**
     * The weather of a trip.
     *
     * @param lagHours with which the bank follows the air [h]
     */
    public ModelWeather(List<StaySky> stays, double lagHours, long seed) {
        this.lagHours = lagHours;
        this.stays = List.copyOf(stays);
        this.seed = seed;
        hours = Unit.HOURS_PER_DAY * stays.stream().mapToInt(StaySky::nights).sum();
    }

    @Override
    public int hours() {
        return hours;
    }

    @Override
    public void fill(int run, RunWeather into) {
        RunRandom random = new RunRandom(seed, run);
        double year = random.nextNormal();
        double change = random.nextNormal();
        DayChain light = new DayChain(random);
        RunRandom ofAir = RunRandom.ofAir(seed, run);
        double table = ofAir.nextNormal();
        TemperatureChain air = new TemperatureChain(ofAir);
        RoughHours hours = new RoughHours(RunRandom.ofHours(seed, run));
        int at = 0;
        for (StaySky stay : stays) {
            DailyClearness days = stay.days(year, change);
            for (int night = 0; night < stay.nights(); night++) {
                stay.fillDay(days.quantile(light.next()), stay.warmerK(table, air.next()), hours, into, at);
                at += Unit.HOURS_PER_DAY;
            }
        }
        into.follow(lagHours);
    }
}
