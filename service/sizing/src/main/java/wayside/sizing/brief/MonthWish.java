package wayside.sizing.brief;

import java.util.Optional;

/**
 * A month of a solar yield.
 *
 * @param month 1 to 12
 * @param sky how sunny; the world climatology if absent
 * @param ambient how warm; the world climatology if absent
 */
public record MonthWish(int month, Optional<Sky> sky, Optional<Ambient> ambient) {
    public static MonthWish of(int month) {
        return new MonthWish(month, Optional.empty(), Optional.empty());
    }
}
