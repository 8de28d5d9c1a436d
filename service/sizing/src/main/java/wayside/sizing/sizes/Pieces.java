package wayside.sizing.sizes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import wayside.sizing.brief.PartSize;

/**
 * Equal pieces of one size.
 *
 * @param size of each
 * @param count 1 or more
 * @param total what they bring together, in the unit of the ladder
 */
public record Pieces<S extends PartSize>(S size, int count, double total) {
    /** Every count of every size that may work side by side. */
    public static <S extends PartSize> List<Pieces<S>> of(
            List<S> ladder, ToDoubleFunction<S> each, ToIntFunction<S> most) {
        List<Pieces<S>> all = new ArrayList<>();
        for (S size : ladder) {
            for (int count = 1; count <= most.applyAsInt(size); count++) {
                all.add(new Pieces<>(size, count, count * each.applyAsDouble(size)));
            }
        }
        return all;
    }
}
