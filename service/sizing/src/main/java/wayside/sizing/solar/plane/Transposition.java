package wayside.sizing.solar.plane;

/**
 * From the horizontal to a tilted plane, hour by hour. A model gives two parts, because glass treats them differently: the
 * light that comes from the sun's own direction, and the rest of the sky.
 *
 * <p>The models are {@link Hdkr}, the default, {@link Isotropic} and {@link Perez}. Powers are hourly means [W/m2]; beam and diffuse are on the horizontal; no part is ever negative.
 */
public interface Transposition {
    /** sin 3 degrees. */
    double SIN_OF_LOWEST_ELEVATION = 0.052335956242943835;

    /**
     * Beam and circumsolar light on the plane.
     *
     * @param beam on the horizontal [W/m2]
     * @param diffuse on the horizontal [W/m2]
     * @param normalWm2 extraterrestrial irradiance at normal incidence [W/m2]
     * @param cosZenith of the sun
     * @param cosIncidence of the sun on the plane
     * @return [W/m2], 0 when the sun is below the horizon or behind the plane
     */
    double sunwardWm2(double beam, double diffuse, double normalWm2, double cosZenith, double cosIncidence);

    /** Light from the rest of the sky on the plane [W/m2]; parameters as above. */
    double skyWm2(double beam, double diffuse, double normalWm2, double cosZenith, Plane plane);

    /**
     * Everything that falls on the plane. At tilt 0 exactly beam plus diffuse.
     *
     * @param albedo share of the global irradiance that the ground throws back, 0 to 1
     */
    default double planeWm2(
            double beam,
            double diffuse,
            double normalWm2,
            double cosZenith,
            double cosIncidence,
            Plane plane,
            double albedo) {
        if (plane.isHorizontal()) {
            return beam + diffuse;
        }
        return sunwardWm2(beam, diffuse, normalWm2, cosZenith, cosIncidence)
                + skyWm2(beam, diffuse, normalWm2, cosZenith, plane)
                + groundWm2(beam + diffuse, albedo, plane);
    }

    /**
     * Light that the ground throws onto the plane: {@code I rho (1 - cos b) / 2}.
     *
     * <p>Source: Liu and Jordan 1963; Duffie &amp; Beckman, eq. 2.15.1.
     *
     * @param global on the horizontal [W/m2]
     */
    static double groundWm2(double global, double albedo, Plane plane) {
        return global * albedo * plane.groundView();
    }

    /**
     * Beam on the plane over beam on the horizontal: {@code Rb = cos i / cos z}.
     *
     * <p>Source: Duffie &amp; Beckman, eq. 1.8.1. Differs from it below 3 degrees of elevation, where the quotient runs away:
     * the divisor is held there.
     *
     * @return 0 or more; 0 when the sun is down or behind the plane
     */
    static double beamRatio(double cosZenith, double cosIncidence) {
        if (cosZenith <= 0 || cosIncidence <= 0) {
            return 0;
        }
        return cosIncidence / Math.max(cosZenith, SIN_OF_LOWEST_ELEVATION);
    }
}
