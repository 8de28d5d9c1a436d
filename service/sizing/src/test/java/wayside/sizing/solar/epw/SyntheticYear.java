package wayside.sizing.solar.epw;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wayside.sizing.solar.plane.Extraterrestrial;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.solar.plane.SunGeometry;

/** Writes an invented typical year: a steady sky of a given clearness and a cosine of temperature. */
public final class SyntheticYear {
    static final double LATITUDE = 47;
    static final double LONGITUDE = 15;

    private SyntheticYear() {}

    public static List<String> lines(double clearness, boolean leap) {
        List<String> lines = new ArrayList<>(List.of(
                "LOCATION,Invented Town,-,XXX,synthetic,000000,47.00,15.00,1.0,400.0",
                "DESIGN CONDITIONS,0",
                "TYPICAL/EXTREME PERIODS,0",
                "GROUND TEMPERATURES,0",
                "HOLIDAYS/DAYLIGHT SAVINGS," + (leap ? "Yes" : "No") + ",0,0,0",
                "COMMENTS 1,Invented for a test",
                "COMMENTS 2,",
                "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31"));
        for (int month = 1; month <= 12; month++) {
            int days = SolarCalendar.daysIn(month) + (leap && month == 2 ? 1 : 0);
            for (int day = 1; day <= days; day++) {
                for (int hour = 1; hour <= 24; hour++) {
                    lines.add(hour(clearness, month, day, hour));
                }
            }
        }
        return lines;
    }

    private static String hour(double clearness, int month, int day, int hour) {
        int n = SolarCalendar.dayOfYear(month, day);
        double omega = SunGeometry.hourAngle(hour - 1) + SunGeometry.equationOfTime(n);
        double cosZenith = SunGeometry.cosZenith(Math.toRadians(LATITUDE), SunGeometry.spencerDeclination(n), omega);
        double top = Extraterrestrial.spencerNormalWm2(n) * Math.max(0, cosZenith);
        double air = 10 + 5 * Math.cos(2 * Math.PI * (hour - 15) / 24);
        return String.format(
                Locale.ROOT,
                "2001,%d,%d,%d,0,?9?9,%.1f,5.0,70,96000,%.0f,1400,300,%.3f,0,%.3f,0,0,0,0,180,2.0",
                month,
                day,
                hour,
                air,
                top,
                clearness * top,
                0.4 * clearness * top);
    }
}
