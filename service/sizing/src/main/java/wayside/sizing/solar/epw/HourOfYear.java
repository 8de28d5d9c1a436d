package wayside.sizing.solar.epw;

import java.util.Locale;
import wayside.sizing.solar.plane.SolarCalendar;

/** Counts through the hours of a common year as the format numbers them: the hour 1 ends at 1 o'clock. */
final class HourOfYear {
    private int index;
    private int month = 1;
    private int day = 1;
    private int hour = 1;

    int index() {
        return index;
    }

    boolean is(int otherMonth, int otherDay, int otherHour) {
        return month == otherMonth && day == otherDay && hour == otherHour;
    }

    boolean isPastTheYear() {
        return month > SolarCalendar.MONTHS;
    }

    void next() {
        index++;
        hour++;
        if (hour > 24) {
            hour = 1;
            day++;
        }
        if (day > SolarCalendar.daysIn(month)) {
            day = 1;
            month++;
        }
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "month %d, day %d, hour %d", month, day, hour);
    }
}
