package wayside.sizing.brief;

import java.util.Optional;

/**
 * A part of the trip spent at one place in one month.
 *
 * @param month 1 to 12
 * @param nights 1 or more
 * @param sky how sunny; the world climatology if absent
 * @param ambient how warm; the world climatology if absent
 * @param drivingHoursPerDay engine running [h], 0 to 24
 * @param hookupHoursPerDay plugged into shore power [h], 0 to 24
 */
public record Stay(
        Place place,
        int month,
        int nights,
        Optional<Sky> sky,
        Optional<Ambient> ambient,
        double drivingHoursPerDay,
        double hookupHoursPerDay) {
    public static Stay of(Place place, int month, int nights) {
        return new Stay(place, month, nights, Optional.empty(), Optional.empty(), 0, 0);
    }

    public Stay lasting(int newNights) {
        return new Stay(place, month, newNights, sky, ambient, drivingHoursPerDay, hookupHoursPerDay);
    }

    public Stay under(Sky newSky) {
        return new Stay(place, month, nights, Optional.of(newSky), ambient, drivingHoursPerDay, hookupHoursPerDay);
    }

    public Stay at(Ambient newAmbient) {
        return new Stay(place, month, nights, sky, Optional.of(newAmbient), drivingHoursPerDay, hookupHoursPerDay);
    }

    public Stay driving(double hoursPerDay) {
        return new Stay(place, month, nights, sky, ambient, hoursPerDay, hookupHoursPerDay);
    }

    public Stay hookedUp(double hoursPerDay) {
        return new Stay(place, month, nights, sky, ambient, drivingHoursPerDay, hoursPerDay);
    }
}
