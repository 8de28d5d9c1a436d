package wayside.server.operation.shared;

import java.util.Objects;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sky;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Trip;

/** Places, skies, stays and trips of a request as the brief wants them. */
public final class TripReader {
    private TripReader() {}

    public static Trip read(At at, TripInput trip) {
        return new Trip(at, Given.list(at.field("stays"), trip.stays(), TripReader::stay));
    }

    public static Stay stay(At at, StayInput stay) {
        return new Stay(
                at,
                place(at.field("place"), stay.place()),
                stay.month(),
                stay.nights(),
                Given.map(at.field("sky"), stay.sky(), TripReader::sky),
                Given.map(at.field("ambient"), stay.ambient(), TripReader::ambient),
                Given.number(stay.drivingHoursPerDay()),
                Given.number(stay.hookupHoursPerDay()));
    }

    public static Place place(At at, PlaceInput place) {
        return new Place(at, place.latitude(), place.longitude(), Given.number(place.elevationM()));
    }

    public static Sky sky(At at, SkyInput sky) {
        return sky.clearnessIndex() != null
                ? new Sky.Clearness(at, sky.clearnessIndex())
                : new Sky.DailyIrradiation(at, Objects.requireNonNull(sky.dailyIrradiationKwhM2()));
    }

    public static Ambient ambient(At at, AmbientInput ambient) {
        return new Ambient(at, ambient.meanC(), Given.number(ambient.dailySwingC()));
    }
}
