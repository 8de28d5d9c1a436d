package wayside.sizing.sizes;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import wayside.sizing.brief.PartSize;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;

/**
 * The next size that exists: the least that will do; but of those at most a tenth above it the one of the fewest pieces, for
 * each piece is a place, four lugs and a fuse. More need never gives less: what was chosen for a greater need would have
 * been better, or out of reach, for the smaller one too.
 */
public final class NextSize {
    /** How much larger a choice may be that takes fewer pieces [share]. Common practice, no source. */
    private static final double ROOM_FOR_FEWER = 0.1;

    private static final double ROUNDING = 1e-9;

    private NextSize() {}

    /** The operation of a derivation. */
    public static NamedOperation operation(String ladder) {
        return NamedOperation.of(
                NamedOperation.Kind.NEXT_SIZE,
                "next size: of " + ladder
                        + " the least that will do; of those at most a tenth above it the one of the fewest"
                        + " pieces",
                Source.commonPractice());
    }

    /** Empty where the ladder ends below the need. */
    public static <S extends PartSize> Optional<Pieces<S>> atLeast(double needed, List<Pieces<S>> all) {
        return least(all, pieces -> reaches(pieces.total(), needed), Pieces::total, Pieces::count);
    }

    /** The largest within a limit; empty where the smallest is above it. */
    public static <S extends PartSize> Optional<Pieces<S>> atMost(double limit, List<Pieces<S>> all) {
        double largest = all.stream()
                .mapToDouble(Pieces::total)
                .filter(total -> reaches(limit, total))
                .max()
                .orElse(Double.NaN);
        return all.stream()
                .filter(pieces -> reaches(limit, pieces.total()) && pieces.total() >= largest * (1 - ROOM_FOR_FEWER))
                .min(Comparator.<Pieces<S>>comparingInt(Pieces::count).thenComparing(p -> -p.total()));
    }

    /** The same of anything that has an amount and a count of pieces. */
    public static <T> Optional<T> least(
            List<T> all, Predicate<T> willDo, ToDoubleFunction<T> amount, ToDoubleFunction<T> pieces) {
        double least = Double.POSITIVE_INFINITY;
        for (T one : all) {
            if (willDo.test(one)) {
                least = Math.min(least, amount.applyAsDouble(one));
            }
        }
        double most = least * (1 + ROOM_FOR_FEWER);
        return all.stream()
                .filter(one -> amount.applyAsDouble(one) <= most && willDo.test(one))
                .min(Comparator.comparingDouble(pieces).thenComparingDouble(amount));
    }

    /** Whether an amount is enough, but for rounding. */
    public static boolean reaches(double amount, double needed) {
        return amount >= needed * (1 - ROUNDING);
    }
}
