package wayside.server.binding.rule;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Of these fields one may be given, not more. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = AtMostOneOf.Check.class)
@Repeatable(AtMostOneOf.List.class)
public @interface AtMostOneOf {
    String[] value();

    String message() default "at most one";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Several such rules on one record. */
    @Target(ElementType.TYPE)
    @Retention(RetentionPolicy.RUNTIME)
    @interface List {
        AtMostOneOf[] value();
    }

    /** Counts what is given. */
    final class Check implements ConstraintValidator<AtMostOneOf, Record> {
        private Fields fields = Fields.NONE;

        @Override
        public void initialize(AtMostOneOf rule) {
            fields = Fields.of(rule.value());
        }

        @Override
        public boolean isValid(Record record, ConstraintValidatorContext context) {
            java.util.List<String> given = fields.given(record);
            return given.size() < 2 || fields.blame(given.get(1), fields.either() + ", not both", context);
        }
    }
}
