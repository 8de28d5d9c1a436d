package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * A place on Earth, WGS 84.
 *
 * @param at where it was given
 * @param latitude [deg], -90 to 90, north positive
 * @param longitude [deg], -180 to 180, east positive
 * @param elevationM above the sea [m]
 */
public record Place(At at, double latitude, double longitude, OptionalDouble elevationM) implements Placed {
    public Place(double latitude, double longitude, OptionalDouble elevationM) {
        this(At.ROOT, latitude, longitude, elevationM);
    }

    public static Place of(double latitude, double longitude) {
        return new Place(latitude, longitude, OptionalDouble.empty());
    }
}
