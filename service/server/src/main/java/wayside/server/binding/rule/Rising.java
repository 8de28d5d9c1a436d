package wayside.server.binding.rule;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.List;

/** The second of two numbers lies above the first, where both are given. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = Rising.Check.class)
public @interface Rising {
    String[] value();

    /** Whether the second may be the first again. */
    boolean orEqual() default false;

    String message() default "rising";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Compares the two. */
    final class Check implements ConstraintValidator<Rising, Record> {
        private Fields fields = Fields.NONE;
        private boolean orEqual;

        @Override
        public void initialize(Rising rule) {
            fields = Fields.of(rule.value());
            orEqual = rule.orEqual();
        }

        @Override
        public boolean isValid(Record record, ConstraintValidatorContext context) {
            List<Double> numbers = fields.numbers(record);
            return numbers.size() < 2
                    || numbers.get(0) < numbers.get(1)
                    || (orEqual && numbers.get(0).equals(numbers.get(1)))
                    || fields.blame(
                            fields.names().get(1),
                            (orEqual ? "at least " : "a number above ")
                                    + fields.names().get(0),
                            context);
        }
    }
}
