package wayside.server.binding.rule;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Looks a number up in the few that are allowed. */
public final class OneOfNumbersCheck implements ConstraintValidator<OneOfNumbers, Double> {
    private double[] allowed = {};

    @Override
    public void initialize(OneOfNumbers rule) {
        allowed = rule.value();
    }

    @Override
    public boolean isValid(@Nullable Double value, ConstraintValidatorContext context) {
        return value == null || Arrays.stream(allowed).anyMatch(number -> number == value);
    }
}
