package wayside.sizing.solar;

import java.util.Optional;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sky;
import wayside.sizing.brief.Stay;

/**
 * A month at a place, with what the request says of its weather and where it says so.
 *
 * @param month 1 to 12
 * @param label opens the label of each step: {@code stay 1}
 * @param path JSON Pointer of the object that may hold {@code month}, {@code sky} and {@code ambient}
 * @param placePath JSON Pointer of the place
 */
public record MonthAt(
        Place place,
        int month,
        Optional<Sky> sky,
        Optional<Ambient> ambient,
        String label,
        String path,
        String placePath) {
    /**
     * The month of a stay.
     *
     * @param index of the stay in its trip, from 0
     */
    public static MonthAt of(Stay stay, int index) {
        String path = "/trip/stays/" + index;
        return new MonthAt(
                stay.place(), stay.month(), stay.sky(), stay.ambient(), "stay " + (index + 1), path, path + "/place");
    }
}
