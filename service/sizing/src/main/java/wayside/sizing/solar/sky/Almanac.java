package wayside.sizing.solar.sky;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import net.e175.klaus.solarpositioning.SunriseResult;
import wayside.sizing.brief.Place;
import wayside.sizing.trace.Unit;

/**
 * The sun's position to the second, by the Solar Position Algorithm: the reference for the short formulas, and what a reader
 * is told of day length and noon height. Too slow for the hourly chain, too exact to be needed there.
 *
 * <p>Source: I. Reda and A. Andreas, Solar position algorithm for solar radiation applications, NREL/TP-560-34302 (revised
 * 2008). Sunrise and sunset are those of the local day: the upper limb on a horizon with standard refraction, -0.833 degrees.
 */
public final class Almanac {
    private static final double HALF_HOUR_DEGREES = 7.5;

    private Almanac() {}

    /**
     * The sun in the sky.
     *
     * @param zenithDegrees refraction included
     * @param azimuthDegrees clockwise from north
     */
    public record Position(double zenithDegrees, double azimuthDegrees) {}

    /**
     * The sun at a moment.
     *
     * @param deltaTSeconds difference between terrestrial time and UT1 [s]
     * @param pressureHpa mean pressure of the year [hPa]
     * @param airC mean temperature of the year [C]
     */
    public static Position position(
            ZonedDateTime when, Place place, double deltaTSeconds, double pressureHpa, double airC) {
        SolarPosition position = SPA.calculateSolarPosition(
                when,
                place.latitude(),
                place.longitude(),
                place.elevationM().orElse(0),
                deltaTSeconds,
                pressureHpa,
                airC);
        return new Position(position.zenithAngle(), position.azimuth());
    }

    /**
     * Sunrise, noon and sunset of a date at a place.
     *
     * @param date in the zone of the place's own longitude, so that its day holds one noon
     */
    public static SunriseResult day(LocalDate date, Place place) {
        return SPA.calculateSunriseTransitSet(
                date.atTime(12, 0).atZone(zone(place)), place.latitude(), place.longitude(), DeltaT.estimate(date));
    }

    /** Hours between sunrise and sunset: 0 in polar night, 24 in polar day. */
    public static double daylightHours(SunriseResult day) {
        if (day instanceof SunriseResult.RegularDay regular) {
            return Duration.between(regular.sunrise(), regular.sunset()).toSeconds() / 3600.0;
        }
        return day instanceof SunriseResult.AllDay ? Unit.HOURS_PER_DAY : 0;
    }

    /** Height of the sun's centre above the horizon at noon, without refraction [deg]; negative in polar night. */
    public static double noonAltitudeDegrees(SunriseResult day, Place place) {
        ZonedDateTime noon = day.transit();
        SolarPosition position = SPA.calculateSolarPosition(
                noon,
                place.latitude(),
                place.longitude(),
                place.elevationM().orElse(0),
                DeltaT.estimate(noon.toLocalDate()));
        return 90 - position.zenithAngle();
    }

    private static ZoneOffset zone(Place place) {
        return ZoneOffset.ofHours((int) Math.floor((place.longitude() + HALF_HOUR_DEGREES) / 15));
    }
}
