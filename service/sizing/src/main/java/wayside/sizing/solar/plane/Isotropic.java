package wayside.sizing.solar.plane;

/**
 * Beam by {@code Ib Rb}, sky by {@code Id (1 + cos b) / 2}.
 *
 * <p>Source: B. Y. H. Liu and R. C. Jordan 1963; Duffie &amp; Beckman, eq. 2.15.1.
 */
public final class Isotropic implements Transposition {
    public static final Transposition MODEL = new Isotropic();

    private Isotropic() {}

    @Override
    public double sunwardWm2(double beam, double diffuse, double normalWm2, double cosZenith, double cosIncidence) {
        return beam * Transposition.beamRatio(cosZenith, cosIncidence);
    }

    @Override
    public double skyWm2(double beam, double diffuse, double normalWm2, double cosZenith, Plane plane) {
        return diffuse * plane.skyView();
    }
}
