package wayside.sizing.solar.plane;

/**
 * Share of the light that enters a flat glass cover at an angle, against straight on.
 *
 * <p>Light from the whole sky and from the ground arrives as if under one effective angle, which depends on the tilt.
 */
public final class IncidenceModifier {
    private static final double REFRACTIVE_INDEX = 1.526;
    /** Extinction 4 per metre through 2 mm of glass. */
    private static final double GLASS_DEPTH = 4 * 0.002;

    private static final double STRAIGHT_ON = transmittance(1);

    private IncidenceModifier() {}

    /**
     * Fresnel reflection at the cover, Bouguer's law inside it.
     *
     * <p>{@code K = tau(i) / tau(0)}, {@code tau = exp(-k L / cos r) (1 - (rs + rp) / 2)}, {@code sin i = n sin r};
     * n 1.526, k 4 /m, L 2 mm.
     *
     * <p>Source: W. De Soto, S. A. Klein and W. A. Beckman, Solar Energy 80 (2006) 78-88; Duffie &amp; Beckman, section 5.1
     * to 5.3.
     *
     * @param cosIncidence cosine of the angle of incidence
     * @return [share], 0 when the light comes from behind
     */
    public static double fresnel(double cosIncidence) {
        return cosIncidence <= 0 ? 0 : transmittance(Math.min(1, cosIncidence)) / STRAIGHT_ON;
    }

    /**
     * The short form: {@code K = 1 - b0 (1 / cos i - 1)}, not below zero.
     *
     * <p>Source: A. F. Souka and H. H. Safwat, Solar Energy 10 (1966) 170-174, taken over by ASHRAE.
     *
     * @param cosIncidence cosine of the angle of incidence
     * @param b0 usually 0.05
     * @return [share]
     */
    public static double ashrae(double cosIncidence, double b0) {
        return cosIncidence <= 0 ? 0 : Math.max(0, 1 - b0 * (1 / cosIncidence - 1));
    }

    /**
     * Modifier for the light of the whole sky: effective angle {@code 59.7 - 0.1388 b + 0.001497 b^2} [deg].
     *
     * <p>Source: M. J. Brandemuehl and W. A. Beckman, Solar Energy 24 (1980) 511-513; Duffie &amp; Beckman, eq. 5.4.2.
     *
     * @param tiltDegrees b, 0 to 90
     */
    public static double ofSky(double tiltDegrees) {
        double angle = 59.7 + tiltDegrees * (-0.1388 + tiltDegrees * 0.001497);
        return fresnel(Math.cos(Math.toRadians(angle)));
    }

    /**
     * Modifier for the light thrown up by the ground: effective angle {@code 90 - 0.5788 b + 0.002693 b^2} [deg].
     *
     * <p>Source: as {@link #ofSky}, eq. 5.4.1.
     *
     * @param tiltDegrees b, 0 to 90
     */
    public static double ofGround(double tiltDegrees) {
        double angle = 90 + tiltDegrees * (-0.5788 + tiltDegrees * 0.002693);
        return fresnel(Math.cos(Math.toRadians(angle)));
    }

    private static double transmittance(double cosI) {
        double sinR = Math.sqrt(1 - cosI * cosI) / REFRACTIVE_INDEX;
        double cosR = Math.sqrt(1 - sinR * sinR);
        double across = (cosI - REFRACTIVE_INDEX * cosR) / (cosI + REFRACTIVE_INDEX * cosR);
        double along = (cosR - REFRACTIVE_INDEX * cosI) / (cosR + REFRACTIVE_INDEX * cosI);
        return Math.exp(-GLASS_DEPTH / cosR) * (1 - (across * across + along * along) / 2);
    }
}
