package wayside.server.binding;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.lang.reflect.AnnotatedElement;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.OneOfNumbers;
import wayside.server.binding.rule.ZeroOrFrom;

/** Says in words what a field takes, from the same annotations that the validator reads. */
final class Accepted {
    private Accepted() {}

    static String one(FieldKind kind, @Nullable AnnotatedElement field, Class<?> type) {
        return switch (kind) {
            case TEXT -> text(field);
            case NUMBER -> "a number" + decimals(field);
            case INTEGER -> "a whole number" + wholes(field);
            case BOOLEAN -> "true or false";
            case CODE ->
                "one of "
                        + Arrays.stream(type.getEnumConstants())
                                .map(constant -> ((Coded) constant).code())
                                .collect(Collectors.joining(", "));
            case OBJECT ->
                "an object with "
                        + String.join(", ", RecordShape.of(type).fields().keySet());
            case LIST -> "a list";
        };
    }

    static String list(AnnotatedElement field, FieldShape element) {
        Size size = field.getAnnotation(Size.class);
        String what = element.kind() == FieldKind.OBJECT ? "objects" : "values";
        return size == null ? "a list of " + what : "a list of " + size.min() + " to " + size.max() + " " + what;
    }

    private static String text(@Nullable AnnotatedElement field) {
        if (field == null) {
            return "a text";
        }
        Pattern pattern = field.getAnnotation(Pattern.class);
        if (pattern != null) {
            return pattern.message();
        }
        Size size = field.getAnnotation(Size.class);
        return size == null ? "a text" : "a text of " + size.min() + " to " + size.max() + " characters";
    }

    private static String decimals(@Nullable AnnotatedElement field) {
        if (field == null) {
            return "";
        }
        OneOfNumbers few = field.getAnnotation(OneOfNumbers.class);
        if (few != null) {
            return ": "
                    + Arrays.stream(few.value())
                            .mapToObj(number ->
                                    new BigDecimal(number).stripTrailingZeros().toPlainString())
                            .collect(Collectors.joining(", "));
        }
        ZeroOrFrom zeroOr = field.getAnnotation(ZeroOrFrom.class);
        DecimalMin min = field.getAnnotation(DecimalMin.class);
        DecimalMax max = field.getAnnotation(DecimalMax.class);
        String low = zeroOr != null ? ": 0, or from " + zeroOr.value() : min != null ? " from " + min.value() : "";
        String high = max == null ? "" : (low.isEmpty() ? " of at most " : " to ") + max.value();
        return low + high;
    }

    private static String wholes(@Nullable AnnotatedElement field) {
        if (field == null) {
            return "";
        }
        Min min = field.getAnnotation(Min.class);
        Max max = field.getAnnotation(Max.class);
        return (min == null ? "" : " from " + min.value()) + (max == null ? "" : " to " + max.value());
    }
}
