package wayside.server.binding.rule;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Of these fields one must be given, or more. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = AtLeastOneOf.Check.class)
public @interface AtLeastOneOf {
    String[] value();

    String message() default "at least one";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Counts what is given. */
    final class Check implements ConstraintValidator<AtLeastOneOf, Record> {
        private Fields fields = Fields.NONE;

        @Override
        public void initialize(AtLeastOneOf rule) {
            fields = Fields.of(rule.value());
        }

        @Override
        public boolean isValid(Record record, ConstraintValidatorContext context) {
            return !fields.given(record).isEmpty() || fields.blame(null, fields.either() + ", or both", context);
        }
    }
}
