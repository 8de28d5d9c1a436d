package wayside.sizing.solar;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.solar.plane.Plane;
import wayside.sizing.solar.sky.MonthAt;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
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

    private static final NamedOperation BEST = NamedOperation.of(
            NamedOperation.Kind.BEST_OF,
            "The one of 0, 10, ... 90 degrees towards the equator that catches most, each reckoned as for the panel",
            Source.definition());
    private static final NamedOperation TOWARDS_THE_EQUATOR = NamedOperation.of(
            NamedOperation.Kind.MONTH_INTEGRAL,
            MonthChain.ON_PLANE.note() + "; the plane faces the equator",
            MonthChain.ON_PLANE.source());
    private static final Expression MOST = Expression.definition("G_max = max(H R, G)");
    private static final Expression LOST = Expression.definition("l = max(0, 1 - G / G_max)");

    /** Without sun nothing is lost. */
    private static final Expression NOTHING_LOST = Expression.definition("l = 0 G_max");

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

    private static PanelTilt of(MonthAt at, SolarMonth month, int bestTilt, double bestRatio) {
        List<Input> inputs = new ArrayList<>(List.of(
                month.sky().clearness().as("KT"),
                month.sky().clearnessSpread().as("s"),
                at.latitudeDegrees().as("L"),
                at.monthOfYear().as("month"),
                month.array().albedo().as("rho")));
        Derived tilt = BEST.value(at.label() + ": tilt that catches most", bestTilt, Unit.DEGREE, inputs);
        inputs.add(tilt.as("b"));
        Derived ratio = TOWARDS_THE_EQUATOR.value(
                at.label() + ": light at the tilt that catches most over light on the ground",
                bestRatio,
                Unit.COUNT,
                inputs);
        Derived most = MOST.value(
                at.label() + ": irradiation at the tilt that catches most",
                Unit.KILOWATT_HOUR_PER_SQUARE_METRE,
                month.horizontalKwhM2().as("H"),
                ratio.as("R"),
                month.planeKwhM2().as("G"));
        return new PanelTilt(tilt, most, lost(at, month.planeKwhM2(), most));
    }

    private static Derived lost(MonthAt at, Derived plane, Derived most) {
        String label = at.label() + ": share lost against the tilt that catches most";
        return most.value() > 0
                ? LOST.value(label, Unit.SHARE, plane.as("G"), most.as("G_max"))
                : NOTHING_LOST.value(label, Unit.SHARE, most.as("G_max"));
    }

    private static double ratio(MonthAt at, SolarMonth month, int tilt) {
        double azimuth = at.place().latitude() < 0 ? 0 : 180;
        return MonthChain.planeRatio(at, month.sky(), month.array(), Plane.of(tilt, azimuth));
    }
}
