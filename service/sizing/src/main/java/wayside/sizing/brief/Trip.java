package wayside.sizing.brief;

import java.util.ArrayList;
import java.util.List;

/**
 * Where and when the customer travels: stays in order, at least one.
 *
 * @param at where it was given
 * @param stays not empty
 */
public record Trip(At at, List<Stay> stays) implements Placed {
    public Trip {
        stays = List.copyOf(stays);
        if (stays.isEmpty()) {
            throw new IllegalArgumentException("A trip needs at least one stay");
        }
    }

    public static Trip of(Stay... stays) {
        return new Trip(At.ROOT, List.of(stays));
    }

    /**
     * The same trip with so many nights: the last stay is lengthened, or what comes later is left out.
     *
     * @param newNights 1 or more
     */
    public Trip lasting(int newNights) {
        List<Stay> kept = new ArrayList<>();
        int left = newNights;
        for (Stay stay : stays) {
            boolean last = kept.size() == stays.size() - 1;
            if (left > 0) {
                kept.add(stay.lasting(last ? left : Math.min(left, stay.nights())));
                left -= stay.nights();
            }
        }
        return new Trip(at, kept);
    }

    public int nights() {
        return stays.stream().mapToInt(Stay::nights).sum();
    }
}
