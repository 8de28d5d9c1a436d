package wayside.sizing.solar.epw;

import wayside.sizing.brief.Place;
import wayside.sizing.solar.plane.Extraterrestrial;
import wayside.sizing.solar.plane.SunGeometry;
import wayside.sizing.solar.sky.Erbs;
import wayside.sizing.trace.Unit;

/**
 * The 8760 hours of a typical year at a place. Hour 0 runs from midnight to one o'clock on 1 January, standard time of the
 * file's zone, no daylight saving.
 */
public final class TypicalYear {
    private final Place place;
    private final double zoneHours;
    private final double[] globalWm2;
    private final double[] diffuseWm2;
    private final double[] airC;

    TypicalYear(Place place, double zoneHours, double[] globalWm2, double[] diffuseWm2, double[] airC) {
        this.place = place;
        this.zoneHours = zoneHours;
        this.globalWm2 = globalWm2;
        this.diffuseWm2 = diffuseWm2;
        this.airC = airC;
        fillMissingDiffuse();
    }

    public Place place() {
        return place;
    }

    /** Irradiance on the horizontal, mean of the hour [W/m2]. */
    public double globalWm2(int hourOfYear) {
        return globalWm2[hourOfYear];
    }

    /** Of that, from the sky; where the file has none, by the hourly form of Erbs and others 1982 [W/m2]. */
    public double diffuseWm2(int hourOfYear) {
        return diffuseWm2[hourOfYear];
    }

    /** Air temperature [C]. */
    public double airC(int hourOfYear) {
        return airC[hourOfYear];
    }

    /** Day of the year, 1 to 365. */
    public static int dayOfYear(int hourOfYear) {
        return hourOfYear / Unit.HOURS_PER_DAY + 1;
    }

    /**
     * Hour angle of the middle of an hour: standard time plus four minutes a degree east of the zone's meridian plus the
     * equation of time.
     *
     * <p>Source: Duffie &amp; Beckman, eq. 1.5.2; equation of time by Spencer 1971.
     *
     * @return [rad]
     */
    public double hourAngle(int hourOfYear) {
        double east = Math.toRadians(place.longitude() - 15 * zoneHours);
        return SunGeometry.hourAngle(hourOfYear % Unit.HOURS_PER_DAY)
                + east
                + SunGeometry.equationOfTime(dayOfYear(hourOfYear));
    }

    double cosZenith(int hourOfYear) {
        return SunGeometry.cosZenith(
                Math.toRadians(place.latitude()),
                SunGeometry.spencerDeclination(dayOfYear(hourOfYear)),
                hourAngle(hourOfYear));
    }

    /** Share of the year's sunlight above the atmosphere that reaches the ground. */
    double clearness() {
        double global = 0;
        double top = 0;
        for (int hour = 0; hour < globalWm2.length; hour++) {
            global += globalWm2[hour];
            top += Extraterrestrial.spencerNormalWm2(dayOfYear(hour)) * Math.max(0, cosZenith(hour));
        }
        return global / top;
    }

    private void fillMissingDiffuse() {
        for (int hour = 0; hour < diffuseWm2.length; hour++) {
            if (Double.isNaN(diffuseWm2[hour])) {
                double top = Extraterrestrial.spencerNormalWm2(dayOfYear(hour)) * Math.max(0, cosZenith(hour));
                diffuseWm2[hour] = top > 0 ? globalWm2[hour] * Erbs.hourly(globalWm2[hour] / top) : globalWm2[hour];
            }
        }
    }
}
