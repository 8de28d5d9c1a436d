package wayside.sizing.brief;

import java.util.Optional;

/**
 * A month of a solar yield.
 *
 * @param at where it was given
 * @param month 1 to 12
 * @param sky how sunny; the world climatology if absent
 * @param ambient how warm; the world climatology if absent
 */
public record MonthWish(At at, int month, Optional<Sky> sky, Optional<Ambient> ambient) implements Placed {
    public MonthWish(int month, Optional<Sky> sky, Optional<Ambient> ambient) {
        this(At.ROOT, month, sky, ambient);
    }

    public static MonthWish of(int month) {
        return of(At.ROOT, month);
    }

    /** A month of which nothing else is said. */
    public static MonthWish of(At at, int month) {
        return new MonthWish(at, month, Optional.empty(), Optional.empty());
    }
}
