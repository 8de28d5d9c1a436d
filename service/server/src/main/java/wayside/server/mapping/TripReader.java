package wayside.server.mapping;

import java.util.Objects;
import wayside.server.api.AmbientInput;
import wayside.server.api.PlaceInput;
import wayside.server.api.SkyInput;
import wayside.server.api.StayInput;
import wayside.server.api.TripInput;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sky;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Trip;

/** Places, skies, stays and trips of a request as the brief wants them. */
public final class TripReader {
    private TripReader() {}

    public static Trip read(TripInput trip) {
        return new Trip(trip.stays().stream().map(TripReader::stay).toList());
    }

    public static Stay stay(StayInput stay) {
        return new Stay(
                place(stay.place()),
                stay.month(),
                stay.nights(),
                Given.map(stay.sky(), TripReader::sky),
                Given.map(stay.ambient(), TripReader::ambient),
                Given.numberOr(stay.drivingHoursPerDay(), 0),
                Given.numberOr(stay.hookupHoursPerDay(), 0));
    }

    public static Place place(PlaceInput place) {
        return new Place(place.latitude(), place.longitude(), Given.number(place.elevationM()));
    }

    public static Sky sky(SkyInput sky) {
        return sky.clearnessIndex() != null
                ? new Sky.Clearness(sky.clearnessIndex())
                : new Sky.DailyIrradiation(Objects.requireNonNull(sky.dailyIrradiationKwhM2()));
    }

    public static Ambient ambient(AmbientInput ambient) {
        return new Ambient(ambient.meanC(), Given.number(ambient.dailySwingC()));
    }
}
