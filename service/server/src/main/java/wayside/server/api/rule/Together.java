package wayside.server.api.rule;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.List;

/** Each of these fields needs the others. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = Together.Check.class)
public @interface Together {
    String[] value();

    String message() default "together";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Looks for the one that is missing. */
    final class Check implements ConstraintValidator<Together, Record> {
        private Fields fields = Fields.NONE;

        @Override
        public void initialize(Together rule) {
            fields = Fields.of(rule.value());
        }

        @Override
        public boolean isValid(Record record, ConstraintValidatorContext context) {
            List<String> given = fields.given(record);
            if (given.isEmpty() || given.size() == fields.names().size()) {
                return true;
            }
            String missing = fields.names().stream()
                    .filter(name -> !given.contains(name))
                    .findFirst()
                    .orElseThrow();
            return fields.blame(missing, "a value beside " + String.join(" and ", given), context);
        }
    }
}
