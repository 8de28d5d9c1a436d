package wayside.sizing.brief;

import java.util.List;

/**
 * Where and when the customer travels: stays in order, at least one.
 *
 * @param stays not empty
 */
public record Trip(List<Stay> stays) {
    public Trip {
        stays = List.copyOf(stays);
        if (stays.isEmpty()) {
            throw new IllegalArgumentException("A trip needs at least one stay");
        }
    }

    public static Trip of(Stay... stays) {
        return new Trip(List.of(stays));
    }

    public int nights() {
        return stays.stream().mapToInt(Stay::nights).sum();
    }
}
