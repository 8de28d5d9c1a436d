package wayside.sizing.budget;

import java.util.Optional;
import java.util.Set;
import wayside.sizing.brief.Load;

/**
 * What a day's AC loads may take from a hookup.
 *
 * @param hookup of the day, where it has one and loads run through
 * @param only loads that run nowhere on the trip but at a hookup, so that no inverter is asked for them
 */
public record MainsUse(Optional<Hookup> hookup, Set<Load> only) {
    /** Everything runs off the battery. */
    public static final MainsUse NONE = new MainsUse(Optional.empty(), Set.of());

    public MainsUse {
        only = Set.copyOf(only);
    }
}
