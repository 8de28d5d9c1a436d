package wayside.sizing.solar.plane;

import wayside.sizing.trace.Unit;

/**
 * All that a day at a latitude and a plane decide about its 24 hours before any weather is known: worked out once, then read
 * by the hour without a sine.
 *
 * <p>Hours are solar time. On a day too short to hold the middle of an hour all light counts as diffuse.
 */
public final class SolarDay {
    private final double[] cosZenith = new double[Unit.HOURS_PER_DAY];
    private final double[] cosIncidence = new double[Unit.HOURS_PER_DAY];
    private final double[] sunwardModifier = new double[Unit.HOURS_PER_DAY];
    private final double[] globalShare = new double[Unit.HOURS_PER_DAY];
    private final double[] diffuseShare = new double[Unit.HOURS_PER_DAY];
    private final Plane plane;
    private final double normalWm2;
    private final double sunsetHourAngle;
    private final double extraterrestrialKwhM2;
    private final double skyModifier;
    private final double groundModifier;

    private SolarDay(double phi, double delta, double normalWm2, Plane plane) {
        this.plane = plane;
        this.normalWm2 = normalWm2;
        sunsetHourAngle = SunGeometry.sunsetHourAngle(phi, delta);
        extraterrestrialKwhM2 = Extraterrestrial.dailyKwhM2(phi, delta, normalWm2);
        HourlySplit.fillGlobal(sunsetHourAngle, globalShare);
        HourlySplit.fillDiffuse(sunsetHourAngle, diffuseShare);
        double tiltDegrees = Math.toDegrees(plane.tilt());
        skyModifier = IncidenceModifier.ofSky(tiltDegrees);
        groundModifier = IncidenceModifier.ofGround(tiltDegrees);
        fillAngles(Math.sin(phi), Math.cos(phi), Math.sin(delta), Math.cos(delta));
    }

    private void fillAngles(double sinPhi, double cosPhi, double sinDelta, double cosDelta) {
        for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
            double cosOmega = HourlySplit.COS_OMEGA[hour];
            double up = SunGeometry.up(sinPhi, cosPhi, sinDelta, cosDelta, cosOmega);
            cosZenith[hour] = up;
            cosIncidence[hour] = plane.eastPart() * SunGeometry.east(cosDelta, HourlySplit.SIN_OMEGA[hour])
                    + plane.northPart() * SunGeometry.north(sinPhi, cosPhi, sinDelta, cosDelta, cosOmega)
                    + plane.cosTilt() * up;
            sunwardModifier[hour] = up > 0 ? IncidenceModifier.fresnel(cosIncidence[hour]) : 0;
        }
    }

    /**
     * A day by Spencer's declination and distance.
     *
     * @param latitudeDegrees -90 to 90
     * @param n day of the year, 1 to 366
     */
    public static SolarDay of(double latitudeDegrees, int n, Plane plane) {
        return new SolarDay(
                Math.toRadians(latitudeDegrees), SolarCalendar.declination(n), SolarCalendar.normalWm2(n), plane);
    }

    /** H0 [kWh/m2]; 0 in polar night. */
    public double extraterrestrialKwhM2() {
        return extraterrestrialKwhM2;
    }

    /** ws [rad], 0 to pi. */
    public double sunsetHourAngle() {
        return sunsetHourAngle;
    }

    /** Irradiance at normal incidence above the atmosphere [W/m2]. */
    public double normalWm2() {
        return normalWm2;
    }

    public double cosZenith(int hour) {
        return cosZenith[hour];
    }

    public double cosIncidence(int hour) {
        return cosIncidence[hour];
    }

    /** Share of the day's global irradiation in an hour; the 24 sum to one, or to zero without sun. */
    public double globalShare(int hour) {
        return globalShare[hour];
    }

    /** Share of the day's diffuse irradiation in an hour; the 24 sum to one, or to zero without sun. */
    public double diffuseShare(int hour) {
        return diffuseShare[hour];
    }

    public Plane plane() {
        return plane;
    }

    /** Incidence-angle modifier of the light from the sun's direction; 0 when it is down. */
    public double sunwardModifier(int hour) {
        return sunwardModifier[hour];
    }

    /** The same of the sky's light. */
    public double skyModifier() {
        return skyModifier;
    }

    /** The same of the ground's light. */
    public double groundModifier() {
        return groundModifier;
    }

    /**
     * Light on the plane in an hour.
     *
     * @param globalWm2 on the horizontal [W/m2]
     * @param diffuseWm2 of that, from the sky [W/m2]
     * @param albedo of the ground, 0 to 1
     * @return [W/m2]; exactly the global at tilt 0
     */
    public double planeWm2(int hour, double globalWm2, double diffuseWm2, Transposition model, double albedo) {
        if (plane.isHorizontal()) {
            return globalWm2;
        }
        double beam = beam(hour, globalWm2, diffuseWm2);
        return model.planeWm2(beam, globalWm2 - beam, normalWm2, cosZenith[hour], cosIncidence[hour], plane, albedo);
    }

    /**
     * Light that enters the glass in an hour: {@link #planeWm2}, each part times its incidence-angle modifier.
     *
     * @return [W/m2]
     */
    public double enteringWm2(int hour, double globalWm2, double diffuseWm2, Transposition model, double albedo) {
        double beam = beam(hour, globalWm2, diffuseWm2);
        double diffuse = globalWm2 - beam;
        if (plane.isHorizontal()) {
            return beam * sunwardModifier[hour] + diffuse * skyModifier;
        }
        return model.sunwardWm2(beam, diffuse, normalWm2, cosZenith[hour], cosIncidence[hour]) * sunwardModifier[hour]
                + model.skyWm2(beam, diffuse, normalWm2, cosZenith[hour], plane) * skyModifier
                + Transposition.groundWm2(globalWm2, albedo, plane) * groundModifier;
    }

    private double beam(int hour, double globalWm2, double diffuseWm2) {
        return cosZenith[hour] > 0 ? Math.max(0, globalWm2 - diffuseWm2) : 0;
    }
}
