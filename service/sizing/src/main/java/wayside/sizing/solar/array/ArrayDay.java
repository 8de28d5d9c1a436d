package wayside.sizing.solar.array;

import java.util.Arrays;
import wayside.sizing.solar.plane.Hdkr;
import wayside.sizing.solar.plane.Plane;
import wayside.sizing.solar.plane.SolarDay;
import wayside.sizing.solar.plane.Transposition;
import wayside.sizing.solar.sky.Erbs;
import wayside.sizing.trace.Unit;

/**
 * An array under one path of the sun: what each of the 24 hours yields, however clear the day.
 *
 * <p>The same light, heat and power as {@link SolarDay} with {@link Hdkr}, {@link CellTemperature} and {@link ArrayOutput} give
 * one after another, multiplied out so that what the hour alone decides is worked out once. With b the beam's share of the
 * hour's global light G and A as {@link Hdkr} has it, the part of the light that comes from all over the sky is
 * {@code i = (1 - b) (1 - A)} and the rest comes from the sun's direction:
 *
 * <p>{@code plane = G ((1 - i) Rb + i (1 + sqrt(b) sin^3(tilt / 2)) V + ground)}, V the share of the sky that the plane sees;
 * {@code entering} the same with each part times its incidence-angle modifier; the yield {@code entering (c - h plane)}, c for
 * the hour's air and h for the heat of the light.
 */
public final class ArrayDay {
    private final double sunsetHourAngle;
    private final boolean flat;
    private final double skyView;
    private final double horizonBand;
    private final double ground;
    private final double groundEntering;
    private final double skyModifier;
    /** Loss of yield by the heat of each W/m2 on the plane [Wh/W per (W/m2)^2]. */
    private final double heat;
    /** What a degree of warmer air adds to {@link #cool}. */
    private final double coolPerK;

    private final int firstSunny;
    private final int afterSunny;
    private final double[] globalShare = new double[Unit.HOURS_PER_DAY];
    /** Share of the day's diffuse light in an hour by its share of the global; without end where no beam comes. */
    private final double[] diffuseRatio = new double[Unit.HOURS_PER_DAY];
    /** A by the beam on the horizontal [m2/W]. */
    private final double[] anisotropy = new double[Unit.HOURS_PER_DAY];

    private final double[] beamRatio = new double[Unit.HOURS_PER_DAY];
    private final double[] sunwardModifier = new double[Unit.HOURS_PER_DAY];
    /** Yield of each W/m2 that enters, at cells as cold as the air [Wh/W per W/m2]. */
    private final double[] cool = new double[Unit.HOURS_PER_DAY];

    /**
     * A day of an array.
     *
     * @param day the sun's path over the array's plane
     * @param airC of each hour [C]
     */
    public ArrayDay(SolarDay day, ArrayModel array, double[] airC) {
        Plane plane = day.plane();
        sunsetHourAngle = day.sunsetHourAngle();
        flat = plane.isHorizontal();
        skyView = plane.skyView();
        horizonBand = plane.horizonBand();
        ground = Transposition.groundWm2(1, array.albedo().value(), plane);
        groundEntering = ground * day.groundModifier();
        skyModifier = day.skyModifier();
        double left = array.lossFactor().value() * array.controllerEfficiency().value();
        double perWm2 = left / ArrayOutput.STC_IRRADIANCE_W_M2;
        double gamma = array.powerCoefficient().value();
        coolPerK = perWm2 * gamma;
        heat = -perWm2 * gamma * array.riseKPerWm2().value();
        int sunny = 0;
        for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
            cool[hour] = perWm2 * (1 + gamma * (airC[hour] - ArrayOutput.STC_CELL_C));
            sunny += day.globalShare(hour) > 0 ? 1 : 0;
            fillLight(day, hour);
        }
        // Light is even about noon.
        firstSunny = (Unit.HOURS_PER_DAY - sunny) / 2;
        afterSunny = Unit.HOURS_PER_DAY - firstSunny;
    }

    private void fillLight(SolarDay day, int hour) {
        double up = day.cosZenith(hour);
        double share = day.globalShare(hour);
        globalShare[hour] = share;
        diffuseRatio[hour] = up > 0 && share > 0 ? day.diffuseShare(hour) / share : Double.POSITIVE_INFINITY;
        anisotropy[hour] = up > 0 ? 1 / (day.normalWm2() * up) : 0;
        beamRatio[hour] = Transposition.beamRatio(up, day.cosIncidence(hour));
        sunwardModifier[hour] = day.sunwardModifier(hour);
    }

    /**
     * Fills the 24 hours of a day.
     *
     * @param k clearness of the day, 0 or more
     * @param globalWh irradiation of the day on the horizontal [Wh/m2]
     * @param warmerK the day's air above the air that was given [K]
     * @param rough what each sunny hour's share is multiplied by before all are scaled back to the day's light, above 0
     * @param yieldWhPerW energy for each rated watt of array, by hour [Wh/W]
     * @param at first hour of the day in it
     */
    public void fill(double k, double globalWh, double warmerK, double[] rough, double[] yieldWhPerW, int at) {
        double diffuse = Erbs.daily(k, sunsetHourAngle);
        Arrays.fill(yieldWhPerW, at, at + Unit.HOURS_PER_DAY, 0);
        if (flat) {
            fillFlat(scaled(globalWh, rough), diffuse, warmerK * coolPerK, rough, yieldWhPerW, at);
        } else {
            fillTilted(scaled(globalWh, rough), diffuse, warmerK * coolPerK, rough, yieldWhPerW, at);
        }
    }

    /** What the rough shares must be multiplied by for the day to have its light [Wh/m2]. */
    private double scaled(double globalWh, double[] rough) {
        double sum = 0;
        for (int hour = firstSunny; hour < afterSunny; hour++) {
            sum += globalShare[hour] * rough[hour];
        }
        return sum > 0 ? globalWh / sum : 0;
    }

    /** Light of an hour on the horizontal, of a rough day's [Wh/m2]. */
    double globalWh(double globalWh, double[] rough, int hour) {
        return scaled(globalWh, rough) * globalShare[hour] * rough[hour];
    }

    /** First hour of the day with sun. */
    public int firstSunny() {
        return firstSunny;
    }

    /** The hour after the last with sun. */
    public int afterSunny() {
        return afterSunny;
    }

    private void fillFlat(
            double globalWh, double diffuse, double warmer, double[] rough, double[] yieldWhPerW, int at) {
        for (int hour = firstSunny; hour < afterSunny; hour++) {
            double global = globalWh * globalShare[hour] * rough[hour];
            double b = notNegative(1 - diffuse * diffuseRatio[hour]);
            double entering = global * (skyModifier + b * (sunwardModifier[hour] - skyModifier));
            yieldWhPerW[at + hour] = entering * notNegative(cool[hour] + warmer - heat * global);
        }
    }

    private void fillTilted(
            double globalWh, double diffuse, double warmer, double[] rough, double[] yieldWhPerW, int at) {
        for (int hour = firstSunny; hour < afterSunny; hour++) {
            double global = globalWh * globalShare[hour] * rough[hour];
            double b = notNegative(1 - diffuse * diffuseRatio[hour]);
            double isotropic = (1 - b) * notNegative(1 - b * global * anisotropy[hour]);
            double sunward = (1 - isotropic) * beamRatio[hour];
            double sky = isotropic * (1 + Math.sqrt(b) * horizonBand) * skyView;
            double plane = global * (sunward + sky + ground);
            double entering = global * (sunward * sunwardModifier[hour] + sky * skyModifier + groundEntering);
            yieldWhPerW[at + hour] = entering * notNegative(cool[hour] + warmer - heat * plane);
        }
    }

    /** Without the care that {@link Math#max} takes of NaN and of the sign of zero, and as costly as all else here. */
    private static double notNegative(double x) {
        return x > 0 ? x : 0;
    }
}
