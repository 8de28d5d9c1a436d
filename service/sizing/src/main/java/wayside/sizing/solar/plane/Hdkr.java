package wayside.sizing.solar.plane;

/**
 * Anisotropic sky: a circumsolar part {@code A = Ib / I0} of the diffuse light is treated as beam, the rest brightens towards
 * the horizon.
 *
 * <p>{@code I_T = (Ib + Id A) Rb + Id (1 - A) (1 + cos b) / 2 (1 + f sin^3(b / 2)) + I rho (1 - cos b) / 2},
 * {@code f = sqrt(Ib / I)}.
 *
 * <p>Source: D. T. Reindl, W. A. Beckman and J. A. Duffie, Solar Energy 45 (1990) 9-17; Duffie &amp; Beckman, eq. 2.16.4 to
 * 2.16.7.
 */
public final class Hdkr implements Transposition {
    public static final Transposition MODEL = new Hdkr();

    private Hdkr() {}

    @Override
    public double sunwardWm2(double beam, double diffuse, double normalWm2, double cosZenith, double cosIncidence) {
        double share = anisotropy(beam, normalWm2, cosZenith);
        return (beam + diffuse * share) * Transposition.beamRatio(cosZenith, cosIncidence);
    }

    @Override
    public double skyWm2(double beam, double diffuse, double normalWm2, double cosZenith, Plane plane) {
        double global = beam + diffuse;
        if (global <= 0) {
            return 0;
        }
        double share = anisotropy(beam, normalWm2, cosZenith);
        double horizon = 1 + Math.sqrt(beam / global) * plane.horizonBand();
        return diffuse * (1 - share) * plane.skyView() * horizon;
    }

    /** A, the transmittance of the beam, 0 to 1. */
    private static double anisotropy(double beam, double normalWm2, double cosZenith) {
        return cosZenith <= 0 ? 0 : Math.min(1, beam / (normalWm2 * cosZenith));
    }
}
