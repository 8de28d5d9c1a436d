package wayside.sizing.solar.epw;

import java.util.Iterator;
import java.util.Locale;
import java.util.OptionalDouble;
import wayside.sizing.brief.Place;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.trace.Unit;

/**
 * Reads a typical year line by line. Only what a sizing needs is kept: place, global and diffuse irradiation, air temperature.
 *
 * <p>The file must hold every hour of one year in order, one record an hour; 29 February is passed over.
 */
public final class EpwReader {
    /** Hours of a common year. */
    public static final int HOURS = 8760;

    private static final int HEADER_LINES = 8;
    private static final int LONGEST_LINE = 20_000;
    private static final double DEGREES_PER_HOUR = 15;
    private static final double FARTHEST_ZONE_HOURS = 3;
    /** The cloudiest places have some 0.3 in a year; less than this is another unit, or an empty column. Common practice, no source. */
    private static final double LEAST_CLEARNESS = 0.05;

    private final double[] globalWm2 = new double[HOURS];
    private final double[] diffuseWm2 = new double[HOURS];
    private final double[] airC = new double[HOURS];
    private final HourOfYear expected = new HourOfYear();
    private Place place = Place.of(0, 0);
    private double zoneHours;
    private boolean located;
    private int line;

    private EpwReader() {}

    /**
     * Reads a year.
     *
     * @param lines of the file, without their ends
     * @throws EpwFormatException at the first line that isn't what the format asks for
     */
    public static TypicalYear read(Iterator<String> lines) {
        EpwReader reader = new EpwReader();
        while (lines.hasNext()) {
            reader.accept(lines.next());
        }
        return reader.finish();
    }

    private void accept(String text) {
        line++;
        if (text.length() > LONGEST_LINE) {
            throw fault("is longer than " + LONGEST_LINE + " characters");
        }
        if (line <= HEADER_LINES) {
            acceptHeader(text);
        } else if (!text.isBlank()) {
            acceptHour(new EpwRecord(line, text));
        }
    }

    private void acceptHeader(String text) {
        EpwRecord record = new EpwRecord(line, text);
        String keyword = record.text(0).toUpperCase(Locale.ROOT);
        if (line == 1) {
            if (!keyword.equals("LOCATION")) {
                throw fault("an EPW file begins with LOCATION; received " + EpwRecord.quoted(record.text(0)));
            }
            acceptLocation(record);
        } else if (line == HEADER_LINES) {
            if (!keyword.equals("DATA PERIODS")) {
                throw fault("the eighth line must be DATA PERIODS; received " + EpwRecord.quoted(record.text(0)));
            }
            if (record.number(2, "records per hour", 1, 60) != 1) {
                throw fault("only files of one record per hour are read");
            }
        }
    }

    private void acceptLocation(EpwRecord record) {
        place = new Place(
                record.number(6, "latitude", -90, 90),
                record.number(7, "longitude", -180, 180),
                OptionalDouble.of(record.number(9, "elevation", -1000, 9999)));
        zoneHours = record.number(8, "time zone", -12, 14);
        requireZoneAtLongitude(record);
        located = true;
    }

    /**
     * The sun's hours are reckoned from the zone, so a wrong one shifts the day. Political zones lie up to about three hours
     * off the sun's; a whole day between them, across the date line, changes no hour.
     */
    private void requireZoneAtLongitude(EpwRecord record) {
        double solarHours = place.longitude() / DEGREES_PER_HOUR;
        if (Math.abs(Math.IEEEremainder(zoneHours - solarHours, Unit.HOURS_PER_DAY)) > FARTHEST_ZONE_HOURS) {
            throw fault(String.format(
                    Locale.ROOT,
                    "time zone (cell 9) must lie within %.0f hours of the sun's own, which at the longitude %s is %+.1f;"
                            + " received %s",
                    FARTHEST_ZONE_HOURS,
                    record.text(7),
                    solarHours,
                    EpwRecord.quoted(record.text(8))));
        }
    }

    private void acceptHour(EpwRecord record) {
        int month = record.whole(1, "month", 1, SolarCalendar.MONTHS);
        int day = record.whole(2, "day", 1, 31);
        int hour = record.whole(3, "hour", 1, 24);
        if (month == 2 && day == 29) {
            return;
        }
        if (expected.isPastTheYear()) {
            throw fault("the year already has its " + HOURS + " hours");
        }
        if (!expected.is(month, day, hour)) {
            throw fault(String.format(
                    Locale.ROOT, "expected %s, received month %d, day %d, hour %d", expected, month, day, hour));
        }
        int index = expected.index();
        airC[index] = record.number(6, "dry bulb temperature", -90, 70);
        globalWm2[index] = record.number(13, "global horizontal radiation", 0, 2000);
        diffuseWm2[index] = record.numberOrMissing(15, "diffuse horizontal radiation", 0, 2000, 9999);
        expected.next();
    }

    private TypicalYear finish() {
        if (!located) {
            throw fault("the file is empty");
        }
        if (!expected.isPastTheYear()) {
            throw fault(String.format(Locale.ROOT, "the file ends before %s", expected));
        }
        TypicalYear year = new TypicalYear(place, zoneHours, globalWm2, diffuseWm2, airC);
        requireSun(year);
        return year;
    }

    private void requireSun(TypicalYear year) {
        double clearness = year.clearness();
        if (clearness < LEAST_CLEARNESS) {
            throw fault(String.format(
                    Locale.ROOT,
                    "global horizontal radiation (cell 14) must be in Wh/m2, and over the year at least %.2f of the"
                            + " sunlight above the atmosphere; received %.4f of it",
                    LEAST_CLEARNESS,
                    clearness));
        }
    }

    private EpwFormatException fault(String message) {
        return new EpwFormatException(Math.max(1, line), message);
    }
}
