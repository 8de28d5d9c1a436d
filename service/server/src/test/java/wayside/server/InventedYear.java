package wayside.server;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** A typical year in the open EPW format, of a place and of days that are invented. */
final class InventedYear {
    private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    /** Ten hours of the same sun each day, 250 W/m2, a third of it diffuse: 2.5 kWh/m2. */
    static String text() {
        StringBuilder text = new StringBuilder("""
                LOCATION,Invented Town,-,XXX,synthetic,0,47.0,15.0,1.0,400.0
                DESIGN CONDITIONS,0
                TYPICAL/EXTREME PERIODS,0
                GROUND TEMPERATURES,0
                HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0
                COMMENTS 1,Invented
                COMMENTS 2,
                DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31
                """);
        for (int month = 1; month <= 12; month++) {
            for (int day = 1; day <= DAYS[month - 1]; day++) {
                for (int hour = 1; hour <= 24; hour++) {
                    int sun = hour > 7 && hour <= 17 ? 250 : 0;
                    text.append(String.format(
                            Locale.ROOT,
                            "2001,%d,%d,%d,0,?9,12.0,5.0,70,96000,0,0,300,%d,0,%d,0,0,0,0,0,2\n",
                            month,
                            day,
                            hour,
                            sun,
                            sun / 3));
                }
            }
        }
        return text.toString();
    }

    static byte[] bytes() {
        return text().getBytes(StandardCharsets.UTF_8);
    }

    private InventedYear() {}
}
