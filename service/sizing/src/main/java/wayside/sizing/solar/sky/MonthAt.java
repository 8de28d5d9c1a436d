package wayside.sizing.solar.sky;

import java.util.Optional;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Placed;
import wayside.sizing.brief.Sky;
import wayside.sizing.brief.Stay;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/**
 * A month at a place, with what the request says of its weather and where it says so.
 *
 * @param at where the object stands that may hold {@code month}, {@code sky} and {@code ambient}
 * @param month 1 to 12
 * @param label opens the label of each step: {@code stay 1}
 */
public record MonthAt(At at, Place place, int month, Optional<Sky> sky, Optional<Ambient> ambient, String label)
        implements Placed {
    /**
     * The month of a stay.
     *
     * @param index of the stay in its trip, from 0
     */
    public static MonthAt of(Stay stay, int index) {
        String label = "stay " + (index + 1);
        return new MonthAt(stay.at(), stay.place(), stay.month(), stay.sky(), stay.ambient(), label);
    }

    /** North positive [deg]. */
    public Derived latitudeDegrees() {
        return Derived.given(label + ": latitude", place.latitude(), Unit.DEGREE, place.at("latitude"));
    }

    /** East positive [deg]. */
    Derived longitudeDegrees() {
        return Derived.given(label + ": longitude", place.longitude(), Unit.DEGREE, place.at("longitude"));
    }

    /** 1 to 12. */
    public Derived monthOfYear() {
        return Derived.given(label + ": month", month, Unit.COUNT, at("month"));
    }
}
