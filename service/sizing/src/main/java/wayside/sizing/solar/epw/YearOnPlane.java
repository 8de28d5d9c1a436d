package wayside.sizing.solar.epw;

import wayside.sizing.solar.plane.Extraterrestrial;
import wayside.sizing.solar.plane.IncidenceModifier;
import wayside.sizing.solar.plane.Plane;
import wayside.sizing.solar.plane.SunGeometry;
import wayside.sizing.solar.plane.Transposition;

/** The hours of a typical year on a panel's plane, ready to be replayed. */
public final class YearOnPlane {
    private final double[] planeWm2 = new double[EpwReader.HOURS];
    private final double[] enteringWm2 = new double[EpwReader.HOURS];

    private YearOnPlane() {}

    /**
     * Carries each hour onto the plane.
     *
     * @param albedo of the ground, 0 to 1
     */
    public static YearOnPlane of(TypicalYear year, Plane plane, Transposition model, double albedo) {
        YearOnPlane result = new YearOnPlane();
        double tiltDegrees = Math.toDegrees(plane.tilt());
        double sky = IncidenceModifier.ofSky(tiltDegrees);
        double ground = IncidenceModifier.ofGround(tiltDegrees);
        for (int hour = 0; hour < EpwReader.HOURS; hour++) {
            if (year.globalWm2(hour) > 0) {
                result.fill(year, hour, plane, model, albedo, sky, ground);
            }
        }
        return result;
    }

    /** Light on the plane, mean of the hour [W/m2]; exactly the global at tilt 0. */
    public double planeWm2(int hourOfYear) {
        return planeWm2[hourOfYear];
    }

    /** Light that enters the glass, mean of the hour [W/m2]. */
    public double enteringWm2(int hourOfYear) {
        return enteringWm2[hourOfYear];
    }

    private void fill(
            TypicalYear year,
            int hour,
            Plane plane,
            Transposition model,
            double albedo,
            double skyModifier,
            double groundModifier) {
        double global = year.globalWm2(hour);
        double cosZenith = year.cosZenith(hour);
        double beam = cosZenith > 0 ? Math.max(0, global - year.diffuseWm2(hour)) : 0;
        double diffuse = global - beam;
        int n = TypicalYear.dayOfYear(hour);
        double cosIncidence = SunGeometry.cosIncidence(
                Math.toRadians(year.place().latitude()),
                SunGeometry.spencerDeclination(n),
                year.hourAngle(hour),
                plane);
        double modifier = IncidenceModifier.fresnel(cosIncidence);
        if (plane.isHorizontal()) {
            planeWm2[hour] = global;
            enteringWm2[hour] = beam * modifier + diffuse * skyModifier;
            return;
        }
        double normal = Extraterrestrial.spencerNormalWm2(n);
        double sunward = model.sunwardWm2(beam, diffuse, normal, cosZenith, cosIncidence);
        double sky = model.skyWm2(beam, diffuse, normal, cosZenith, plane);
        double ground = Transposition.groundWm2(global, albedo, plane);
        planeWm2[hour] = sunward + sky + ground;
        enteringWm2[hour] = sunward * modifier + sky * skyModifier + ground * groundModifier;
    }
}
