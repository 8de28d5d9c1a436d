package wayside.sizing.brief;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A part of the trip spent at one place in one month.
 *
 * @param at where it was given
 * @param month 1 to 12
 * @param nights 1 or more
 * @param sky how sunny; the world climatology if absent
 * @param ambient how warm; the world climatology if absent
 * @param drivingHoursPerDay engine running [h], 0 to 24; none if absent
 * @param hookupHoursPerDay plugged into shore power [h], 0 to 24; none if absent
 */
public record Stay(
        At at,
        Place place,
        int month,
        int nights,
        Optional<Sky> sky,
        Optional<Ambient> ambient,
        OptionalDouble drivingHoursPerDay,
        OptionalDouble hookupHoursPerDay)
        implements Placed {
    /** Engine running [h], 0 to 24. */
    public double drivingHours() {
        return drivingHoursPerDay.orElse(0);
    }

    /** Plugged into shore power [h], 0 to 24. */
    public double hookupHours() {
        return hookupHoursPerDay.orElse(0);
    }

    public static Stay of(Place place, int month, int nights) {
        return new Stay(
                At.ROOT,
                place,
                month,
                nights,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    public Stay lasting(int newNights) {
        return new Stay(at, place, month, newNights, sky, ambient, drivingHoursPerDay, hookupHoursPerDay);
    }

    public Stay under(Sky newSky) {
        return new Stay(at, place, month, nights, Optional.of(newSky), ambient, drivingHoursPerDay, hookupHoursPerDay);
    }

    public Stay at(Ambient newAmbient) {
        return new Stay(at, place, month, nights, sky, Optional.of(newAmbient), drivingHoursPerDay, hookupHoursPerDay);
    }

    public Stay driving(double hoursPerDay) {
        return new Stay(at, place, month, nights, sky, ambient, OptionalDouble.of(hoursPerDay), hookupHoursPerDay);
    }

    public Stay hookedUp(double hoursPerDay) {
        return new Stay(at, place, month, nights, sky, ambient, drivingHoursPerDay, OptionalDouble.of(hoursPerDay));
    }
}
