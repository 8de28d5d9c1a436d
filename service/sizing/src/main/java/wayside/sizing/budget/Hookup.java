package wayside.sizing.budget;

import java.util.List;
import wayside.sizing.trace.Derived;

/**
 * A hookup that AC loads run straight off while the vehicle is plugged in.
 *
 * @param hours a day [h]
 * @param limitW that it gives [W]
 * @param pluggedIn part of each hour of the day [share]
 */
public record Hookup(Derived hours, Derived limitW, List<Double> pluggedIn) {
    public Hookup {
        pluggedIn = List.copyOf(pluggedIn);
    }
}
