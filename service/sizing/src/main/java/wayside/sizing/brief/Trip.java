package wayside.sizing.brief;

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

    public int nights() {
        return stays.stream().mapToInt(Stay::nights).sum();
    }
}
