package wayside.sizing.solar.plane;

/**
 * A panel's plane, with what the transposition needs of it worked out once.
 *
 * @param tilt from the horizontal [rad], 0 to pi/2
 * @param cosTilt cosine of the tilt
 * @param sinTilt sine of the tilt
 * @param eastPart east component of the unit normal
 * @param northPart north component of the unit normal
 * @param skyView share of the sky dome that the plane sees, {@code (1 + cos b) / 2}
 * @param groundView share of the ground that it sees, {@code (1 - cos b) / 2}
 * @param horizonBand {@code sin^3(b / 2)} of the HDKR model
 */
public record Plane(
        double tilt,
        double cosTilt,
        double sinTilt,
        double eastPart,
        double northPart,
        double skyView,
        double groundView,
        double horizonBand) {
    /**
     * A plane from its two angles.
     *
     * @param tiltDegrees 0 to 90
     * @param azimuthDegrees the way it faces, clockwise from north; without meaning at tilt 0
     */
    public static Plane of(double tiltDegrees, double azimuthDegrees) {
        double tilt = Math.toRadians(tiltDegrees);
        double azimuth = Math.toRadians(azimuthDegrees);
        double cos = Math.cos(tilt);
        double sin = Math.sin(tilt);
        double half = Math.sin(tilt / 2);
        return new Plane(
                tilt,
                cos,
                sin,
                sin * Math.sin(azimuth),
                sin * Math.cos(azimuth),
                (1 + cos) / 2,
                (1 - cos) / 2,
                half * half * half);
    }

    public boolean isHorizontal() {
        return tilt == 0;
    }
}
