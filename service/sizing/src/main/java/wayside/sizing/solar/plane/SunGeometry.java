package wayside.sizing.solar.plane;

import wayside.sizing.trace.Unit;

/** Angles between the sun, the horizon and a plane. */
public final class SunGeometry {
    private static final double TWO_PI = 2 * Math.PI;

    private SunGeometry() {}

    /**
     * Declination, the short form of the textbooks.
     *
     * <p>{@code delta = 23.45 sin(360 (284 + n) / 365)} [deg].
     *
     * <p>Source: P. I. Cooper, The absorption of radiation in solar stills, Solar Energy 12 (1969) 333-346; Duffie &amp;
     * Beckman, Solar Engineering of Thermal Processes, eq. 1.6.1a.
     *
     * @param n day of the year, 1 to 366
     * @return [rad]
     */
    public static double cooperDeclination(int n) {
        return Math.toRadians(23.45) * Math.sin(TWO_PI * (284 + n) / 365);
    }

    /**
     * Declination, the form the hourly chain uses.
     *
     * <p>Source: J. W. Spencer, Fourier series representation of the position of the sun, Search 2 (1971) 172.
     *
     * @param n day of the year, 1 to 366
     * @return [rad]
     */
    public static double spencerDeclination(int n) {
        double b = TWO_PI * (n - 1) / 365;
        return 0.006918
                - 0.399912 * Math.cos(b)
                + 0.070257 * Math.sin(b)
                - 0.006758 * Math.cos(2 * b)
                + 0.000907 * Math.sin(2 * b)
                - 0.002697 * Math.cos(3 * b)
                + 0.00148 * Math.sin(3 * b);
    }

    /**
     * Equation of time: by how much the sun is ahead of the clock.
     *
     * <p>{@code E = 0.0000075 + 0.001868 cos B - 0.032077 sin B - 0.014615 cos 2B - 0.040849 sin 2B} [rad].
     *
     * <p>Source: J. W. Spencer, Search 2 (1971) 172, with the first constant as its author later corrected it.
     *
     * @param n day of the year, 1 to 366
     * @return [rad], positive when the sun is early
     */
    public static double equationOfTime(int n) {
        double b = TWO_PI * (n - 1) / 365;
        return 0.0000075
                + 0.001868 * Math.cos(b)
                - 0.032077 * Math.sin(b)
                - 0.014615 * Math.cos(2 * b)
                - 0.040849 * Math.sin(2 * b);
    }

    /**
     * Half the length of the day as an angle: {@code cos ws = -tan phi tan delta}, clipped to 0 in polar night and to pi in
     * polar day.
     *
     * <p>Source: Duffie &amp; Beckman, eq. 1.6.10. Differs from it in the clipping, which it leaves to the reader.
     *
     * @param phi latitude [rad], -pi/2 to pi/2
     * @param delta declination [rad]
     * @return ws [rad], 0 to pi
     */
    public static double sunsetHourAngle(double phi, double delta) {
        return Math.acos(Math.max(-1, Math.min(1, -Math.tan(phi) * Math.tan(delta))));
    }

    /** Hours from sunrise to sunset, geometric: {@code N = 24 ws / pi}. Source: Duffie &amp; Beckman, eq. 1.6.11. */
    public static double daylightHours(double phi, double delta) {
        return Unit.HOURS_PER_DAY * sunsetHourAngle(phi, delta) / Math.PI;
    }

    /**
     * Hour angle of the middle of an hour: {@code omega = 15 (h + 0.5 - 12)} [deg].
     *
     * @param hour of solar time, 0 to 23
     * @return [rad]
     */
    public static double hourAngle(int hour) {
        return Math.PI / 12 * (hour - 11.5);
    }

    /**
     * Cosine of the zenith angle: {@code cos z = cos phi cos delta cos omega + sin phi sin delta}.
     *
     * <p>Source: Duffie &amp; Beckman, eq. 1.6.5.
     *
     * @return -1 to 1; negative below the horizon
     */
    public static double cosZenith(double phi, double delta, double omega) {
        return up(Math.sin(phi), Math.cos(phi), Math.sin(delta), Math.cos(delta), Math.cos(omega));
    }

    /** {@link #cosZenith} from sines and cosines at hand: the upward part of the sun's direction. */
    static double up(double sinPhi, double cosPhi, double sinDelta, double cosDelta, double cosOmega) {
        return cosPhi * cosDelta * cosOmega + sinPhi * sinDelta;
    }

    /** The northward part of the sun's direction. */
    static double north(double sinPhi, double cosPhi, double sinDelta, double cosDelta, double cosOmega) {
        return cosPhi * sinDelta - sinPhi * cosDelta * cosOmega;
    }

    /** The eastward part of the sun's direction. */
    static double east(double cosDelta, double sinOmega) {
        return -cosDelta * sinOmega;
    }

    /**
     * Azimuth of the sun from its east and north components, so that no quadrant has to be guessed.
     *
     * @return [rad], 0 to 2 pi, clockwise from north
     */
    public static double azimuth(double phi, double delta, double omega) {
        double angle = Math.atan2(
                east(Math.cos(delta), Math.sin(omega)),
                north(Math.sin(phi), Math.cos(phi), Math.sin(delta), Math.cos(delta), Math.cos(omega)));
        return angle < 0 ? angle + TWO_PI : angle;
    }

    /**
     * Cosine of the angle between the sun and a plane's normal: the product of the two unit vectors (east, north, up).
     *
     * <p>Source: geometry; equal to Duffie &amp; Beckman, eq. 1.6.2 and 1.6.3.
     *
     * @return -1 to 1; negative when the sun is behind the plane
     */
    public static double cosIncidence(double phi, double delta, double omega, Plane plane) {
        double sinPhi = Math.sin(phi);
        double cosPhi = Math.cos(phi);
        double sinDelta = Math.sin(delta);
        double cosDelta = Math.cos(delta);
        double cosOmega = Math.cos(omega);
        return plane.eastPart() * east(cosDelta, Math.sin(omega))
                + plane.northPart() * north(sinPhi, cosPhi, sinDelta, cosDelta, cosOmega)
                + plane.cosTilt() * up(sinPhi, cosPhi, sinDelta, cosDelta, cosOmega);
    }
}
