package wayside.sizing.solar.plane;

/**
 * Eight kinds of sky, each with its own circumsolar and horizon brightening.
 *
 * <p>{@code sky = Id ((1 - F1) (1 + cos b) / 2 + F1 a / c + F2 sin b)}, {@code a = max(0, cos i)},
 * {@code c = max(cos 85, cos z)}; F1 and F2 from sky clearness epsilon and brightness Delta.
 *
 * <p>Source: R. Perez, P. Ineichen, R. Seals, J. Michalsky and R. Stewart, Modeling daylight availability and irradiance
 * components from direct and global irradiance, Solar Energy 44 (1990) 271-289, coefficients for all sites; relative air mass
 * by F. Kasten and A. T. Young, Applied Optics 28 (1989) 4735-4738. The beam is divided by the cosine of the zenith no lower
 * than 3 degrees of elevation.
 */
public final class Perez implements Transposition {
    public static final Transposition MODEL = new Perez();

    private static final double KAPPA = 1.041;
    private static final double COS_85 = Math.cos(Math.toRadians(85));
    private static final double[] EPSILON_BOUNDS = {1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2};
    private static final double[][] F = {
        {-0.008, 0.588, -0.062, -0.060, 0.072, -0.022},
        {0.130, 0.683, -0.151, -0.019, 0.066, -0.029},
        {0.330, 0.487, -0.221, 0.055, -0.064, -0.026},
        {0.568, 0.187, -0.295, 0.109, -0.152, -0.014},
        {0.873, -0.392, -0.362, 0.226, -0.462, 0.001},
        {1.132, -1.237, -0.412, 0.288, -0.823, 0.056},
        {1.060, -1.600, -0.359, 0.264, -1.127, 0.131},
        {0.678, -0.327, -0.250, 0.156, -1.377, 0.251},
    };

    private Perez() {}

    @Override
    public double sunwardWm2(double beam, double diffuse, double normalWm2, double cosZenith, double cosIncidence) {
        double direct = beam * Transposition.beamRatio(cosZenith, cosIncidence);
        if (diffuse <= 0 || cosZenith <= 0) {
            return direct;
        }
        double f1 = circumsolar(beam, diffuse, normalWm2, cosZenith);
        return direct + diffuse * f1 * Math.max(0, cosIncidence) / Math.max(COS_85, cosZenith);
    }

    @Override
    public double skyWm2(double beam, double diffuse, double normalWm2, double cosZenith, Plane plane) {
        if (diffuse <= 0) {
            return 0;
        }
        if (cosZenith <= 0) {
            return diffuse * plane.skyView();
        }
        double f1 = circumsolar(beam, diffuse, normalWm2, cosZenith);
        double f2 = coefficient(3, beam, diffuse, normalWm2, cosZenith);
        return Math.max(0, diffuse * ((1 - f1) * plane.skyView() + f2 * plane.sinTilt()));
    }

    private static double circumsolar(double beam, double diffuse, double normalWm2, double cosZenith) {
        return Math.max(0, coefficient(0, beam, diffuse, normalWm2, cosZenith));
    }

    /** {@code F11 + F12 Delta + F13 z} or the same of F2, whose columns begin at 3. */
    private static double coefficient(int column, double beam, double diffuse, double normalWm2, double cosZenith) {
        double z = Math.acos(Math.min(1, cosZenith));
        double brightness = diffuse * airMass(z) / normalWm2;
        double[] row = F[bin(beam, diffuse, z, cosZenith)];
        return row[column] + row[column + 1] * brightness + row[column + 2] * z;
    }

    private static int bin(double beam, double diffuse, double z, double cosZenith) {
        double normalBeam = beam / Math.max(cosZenith, SIN_OF_LOWEST_ELEVATION);
        double cube = KAPPA * z * z * z;
        double epsilon = ((diffuse + normalBeam) / diffuse + cube) / (1 + cube);
        int bin = 0;
        while (bin < EPSILON_BOUNDS.length && epsilon >= EPSILON_BOUNDS[bin]) {
            bin++;
        }
        return bin;
    }

    /**
     * Relative air mass: {@code m = 1 / (cos z + 0.50572 (96.07995 - z)^-1.6364)}, z in degrees.
     *
     * @param z zenith angle [rad], 0 to pi/2
     */
    static double airMass(double z) {
        return 1 / (Math.cos(z) + 0.50572 * Math.pow(96.07995 - Math.toDegrees(z), -1.6364));
    }
}
