package wayside.sizing.brief;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The room for panels on the roof, as far as it was measured: an area, or the free rectangles.
 *
 * @param at where it was given
 * @param areaM2 free [m2]; 0 for none
 * @param rectangles free of vents and rails
 */
public record Roof(At at, OptionalDouble areaM2, List<Rectangle> rectangles) implements Placed {
    public Roof {
        rectangles = List.copyOf(rectangles);
    }

    /**
     * A free rectangle.
     *
     * @param at where it was given
     * @param lengthM [m]
     * @param widthM [m]
     */
    public record Rectangle(At at, double lengthM, double widthM) implements Placed {}

    /** Nothing is said; it would stand there. */
    public static Roof open(At at) {
        return new Roof(at, OptionalDouble.empty(), List.of());
    }
}
