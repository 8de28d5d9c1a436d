package wayside.sizing.journey;

import java.util.Optional;
import wayside.sizing.solar.sky.SkyMonth;
import wayside.sizing.storage.BankPlace;
import wayside.sizing.storage.MissingHeater;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * How warm the bank is on the days of a stay.
 *
 * @param place where it stands
 * @param warmerK than the air [K]
 * @param unheatedC mean without a heater [C]
 * @param meanC mean as it is [C]
 * @param swingK between its highest and its lowest of a day [K]
 * @param coldDayC mean of the unheated bank on one of the coldest days in forty [C]
 * @param heaterWh what a heater takes on a cold day [Wh]
 */
public record BankWarmth(
        BankPlace place,
        Derived warmerK,
        Derived unheatedC,
        Derived meanC,
        Derived swingK,
        Derived coldDayC,
        Optional<Derived> heaterWh) {
    /** Standard deviations below the mean that one day in forty lies beyond. */
    private static final double COLD_SPELL = 2;

    private static final double WARMEST_HOUR = 15;
    private static final double OMEGA = 2 * Math.PI / Unit.HOURS_PER_DAY;

    /** How a first-order lag damps a wave of period 24 h. */
    private static final Expression DAMPED = Expression.of(
                    "D_b = D / sqrt(1 + (w tau)^2)",
                    Source.handbook("Physics textbooks: first-order system", "amplitude of its response to a sine"))
            .with("w", OMEGA, Unit.PER_HOUR);

    private static final Expression COLD_DAY =
            Expression.commonPractice("T = T_b - z sqrt(s_T^2 + u_T^2)").with("z", COLD_SPELL, Unit.COUNT);

    static BankWarmth of(String whose, SkyMonth sky, BankPlace place) {
        Derived warmer = place.warmerK(whose, sky.meanC());
        Derived unheated = BankPlace.meanC(whose, sky.meanC(), warmer);
        Derived swing = DAMPED.value(
                whose + "daily swing of the bank",
                Unit.KELVIN,
                sky.dailySwingK().as("D"),
                place.lagHours().as("tau"));
        Derived coldDay = COLD_DAY.value(
                whose + "mean temperature of the unheated bank on one of the coldest days in forty",
                Unit.CELSIUS,
                unheated.as("T_b"),
                sky.daySpreadK().as("s_T"),
                sky.meanErrorK().as("u_T"));
        return new BankWarmth(
                place,
                warmer,
                unheated,
                place.heating().map(heater -> heater.warmedC(unheated)).orElse(unheated),
                swing,
                coldDay,
                place.heating().map(heater -> heater.dayWh(whose + "heater of the bank on a cold day", coldDay)));
    }

    /** The coldest that it gets in the night of a day as cold as one in forty [C]. */
    public double coldestC() {
        return heated(coldDayC.value() - swingK.value() / 2);
    }

    /** Of the mean day: behind the air's own wave by {@code atan(w tau) / w}, and less high [C]. */
    public double[] dayC() {
        double late = Math.atan(OMEGA * place.lagHours().value());
        double[] byHour = new double[Unit.HOURS_PER_DAY];
        for (int hour = 0; hour < byHour.length; hour++) {
            double wave = Math.cos(OMEGA * (hour + 0.5 - WARMEST_HOUR) - late);
            byHour[hour] = heated(unheatedC.value() + swingK.value() / 2 * wave);
        }
        return byHour;
    }

    /** The heater that would keep it out of the frost on a cold day, where it has none. */
    public Optional<MissingHeater> missingHeater() {
        return MissingHeater.of(place, coldDayC);
    }

    private double heated(double unheated) {
        return place.heating().map(heater -> heater.warmedC(unheated)).orElse(unheated);
    }
}
