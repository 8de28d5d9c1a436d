package wayside.server.binding;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import java.lang.reflect.AnnotatedElement;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.OneOfNumbers;
import wayside.server.binding.rule.ZeroOrFrom;

/**
 * What a field takes, in figures, from the same annotations that the validator reads.
 *
 * @param minimum least value, or length of a list or text
 * @param maximum largest value, or length of a list or text
 * @param allowed the only values; any when empty
 */
record Bounds(@Nullable Double minimum, @Nullable Double maximum, List<Object> allowed) {
    static final Bounds NONE = new Bounds(null, null, List.of());

    static Bounds of(@Nullable AnnotatedElement field) {
        if (field == null) {
            return NONE;
        }
        OneOfNumbers few = field.getAnnotation(OneOfNumbers.class);
        if (few != null) {
            return new Bounds(
                    null,
                    null,
                    Arrays.stream(few.value()).<Object>mapToObj(value -> value).toList());
        }
        Size size = field.getAnnotation(Size.class);
        if (size != null) {
            return new Bounds((double) size.min(), (double) size.max(), List.of());
        }
        return new Bounds(least(field), most(field), List.of());
    }

    private static @Nullable Double least(AnnotatedElement field) {
        ZeroOrFrom zeroOr = field.getAnnotation(ZeroOrFrom.class);
        DecimalMin decimal = field.getAnnotation(DecimalMin.class);
        Min whole = field.getAnnotation(Min.class);
        if (zeroOr != null) {
            // Zero itself is taken too, but nobody who meant a value means none.
            return Double.valueOf(zeroOr.value());
        }
        return decimal != null
                ? Double.valueOf(decimal.value())
                : whole != null ? Double.valueOf((double) whole.value()) : null;
    }

    private static @Nullable Double most(AnnotatedElement field) {
        DecimalMax decimal = field.getAnnotation(DecimalMax.class);
        Max whole = field.getAnnotation(Max.class);
        return decimal != null
                ? Double.valueOf(decimal.value())
                : whole != null ? Double.valueOf((double) whole.value()) : null;
    }
}
