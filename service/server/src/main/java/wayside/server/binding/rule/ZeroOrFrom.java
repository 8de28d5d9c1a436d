package wayside.server.binding.rule;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.jspecify.annotations.Nullable;

/** Zero, for none, or a number from a least one on: nothing between is meant. */
@Target(ElementType.FIELD)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = ZeroOrFrom.Check.class)
public @interface ZeroOrFrom {
    /** The least number above zero. */
    String value();

    String message() default "0 or more";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Compares with the least number. */
    final class Check implements ConstraintValidator<ZeroOrFrom, Double> {
        private double least;

        @Override
        public void initialize(ZeroOrFrom rule) {
            least = Double.parseDouble(rule.value());
        }

        @Override
        public boolean isValid(@Nullable Double value, ConstraintValidatorContext context) {
            return value == null || value == 0 || value >= least;
        }
    }
}
