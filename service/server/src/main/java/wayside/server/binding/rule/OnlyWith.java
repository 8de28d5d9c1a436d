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

/** These fields mean something only beside another: alone they would be dropped in silence, so they are refused. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = OnlyWith.Check.class)
@Repeatable(OnlyWith.List.class)
public @interface OnlyWith {
    String[] value();

    /** The field beside which they mean something; one within another is {@code target/chanceOfRunningFlat}. */
    String beside();

    /** The code that it must have; any value when left open. */
    String is() default "";

    /** Whether it in turn can't do without them. */
    boolean needed() default false;

    String message() default "only with another field";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Several such rules on one record. */
    @Target(ElementType.TYPE)
    @Retention(RetentionPolicy.RUNTIME)
    @interface List {
        OnlyWith[] value();
    }

    /** Looks for those that stand alone, or are missing. */
    final class Check implements ConstraintValidator<OnlyWith, Record> {
        private Fields fields = Fields.NONE;
        private Fields beside = Fields.NONE;
        private String is = "";
        private boolean needed;

        @Override
        public void initialize(OnlyWith rule) {
            fields = Fields.of(rule.value());
            beside = Fields.of(rule.beside());
            is = rule.is();
            needed = rule.needed();
        }

        @Override
        public boolean isValid(Record record, ConstraintValidatorContext context) {
            java.util.List<String> given = fields.given(record);
            boolean stands = is.isEmpty()
                    ? !beside.given(record).isEmpty()
                    : beside.codes(record).contains(is);
            String other = beside.either() + (is.isEmpty() ? "" : " " + is);
            boolean valid = true;
            for (String name : fields.names()) {
                if (!stands && given.contains(name)) {
                    valid = fields.blame(name, "nothing, or " + other + " beside it", context);
                } else if (stands && needed && !given.contains(name)) {
                    valid = fields.blame(name, "a value beside " + other, context);
                }
            }
            return valid;
        }
    }
}
