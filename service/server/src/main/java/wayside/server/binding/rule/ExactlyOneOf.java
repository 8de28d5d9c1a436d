package wayside.server.binding.rule;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Of these fields one must be given, and only one. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = ExactlyOneOf.Check.class)
public @interface ExactlyOneOf {
    String[] value();

    String message() default "exactly one";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Counts what is given. */
    final class Check implements ConstraintValidator<ExactlyOneOf, Record> {
        private Fields fields = Fields.NONE;

        @Override
        public void initialize(ExactlyOneOf rule) {
            fields = Fields.of(rule.value());
        }

        @Override
        public boolean isValid(Record record, ConstraintValidatorContext context) {
            if (fields.given(record).size() > 1) {
                return fields.blame(fields.given(record).get(1), "either " + fields.either() + ", not both", context);
            }
            return !fields.given(record).isEmpty() || fields.blame(null, fields.either(), context);
        }
    }
}
