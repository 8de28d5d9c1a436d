package wayside.sizing.solar;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Unit;

/**
 * The tilt that would catch most of a month, towards the equator: what a flat roof gives away.
 *
 * @param bestTilt of 0, 10, ... 90 degrees [deg]
 * @param bestKwhM2 irradiation of the mean day at that tilt [kWh/m2]
 * @param lossShare what the panel as it sits catches less; never negative
 */
public record PanelTilt(Derived bestTilt, Derived bestKwhM2, Derived lossShare) {
    private static final int STEP_DEGREES = 10;
    private static final int STEEPEST_DEGREES = 90;

    /** The best tilt of a month under the same sky. */
    public static PanelTilt of(MonthAt at, SolarMonth month) {
        double best = 1;
        int bestTilt = 0;
        for (int tilt = STEP_DEGREES; tilt <= STEEPEST_DEGREES; tilt += STEP_DEGREES) {
            double ratio = ratio(at, month, tilt);
            if (ratio > best) {
                best = ratio;
                bestTilt = tilt;
            }
        }
        return of(at, month, bestTilt, best);
    }

    private static PanelTilt of(MonthAt at, SolarMonth month, int bestTilt, double ratio) {
        Derived horizontal = month.horizontalKwhM2();
        Formula search = Formula.definition("the best of 0, 10, ... 90 degrees towards the equator, as for the panel");
        Derived tilt = Derived.computed(
                at.label() + ": tilt that catches most",
                bestTilt,
                Unit.DEGREE,
                search,
                horizontal.as("H"),
                month.sky().clearness().as("KT"));
        Derived most = Derived.computed(
                at.label() + ": irradiation at the tilt that catches most",
                Math.max(horizontal.value() * ratio, month.planeKwhM2().value()),
                Unit.KILOWATT_HOUR_PER_SQUARE_METRE,
                search,
                horizontal.as("H"),
                tilt.as("b"));
        double loss = most.value() > 0 ? 1 - month.planeKwhM2().value() / most.value() : 0;
        return new PanelTilt(
                tilt,
                most,
                Derived.computed(
                        at.label() + ": share lost against the tilt that catches most",
                        Math.max(0, loss),
                        Unit.SHARE,
                        Formula.definition("1 - G / Gmax"),
                        month.planeKwhM2().as("G"),
                        most.as("Gmax")));
    }

    private static double ratio(MonthAt at, SolarMonth month, int tilt) {
        double azimuth = at.place().latitude() < 0 ? 0 : 180;
        return MonthChain.light(at, month.sky(), month.array(), Plane.of(tilt, azimuth))
                .planeRatio();
    }
}
