package wayside.server.binding.rule;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Each rung of a ladder lies above the one before it, among those that agree in some fields. */
@Target(ElementType.FIELD)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = RisingLadder.Check.class)
public @interface RisingLadder {
    /** The field that rises. */
    String by();

    /** The fields in which rungs of one ladder agree. */
    String[] within();

    String message() default "rising";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Compares each rung with the last of its kind, and blames each that does not rise. */
    final class Check implements ConstraintValidator<RisingLadder, java.util.List<? extends @Nullable Record>> {
        private String by = "";
        private Fields rising = Fields.NONE;
        private Fields within = Fields.NONE;

        @Override
        public void initialize(RisingLadder rule) {
            by = rule.by();
            rising = Fields.of(by);
            within = Fields.of(rule.within());
        }

        @Override
        public boolean isValid(
                java.util.@Nullable List<? extends @Nullable Record> ladder, ConstraintValidatorContext context) {
            boolean valid = true;
            Map<String, Double> last = new HashMap<>();
            for (int i = 0; ladder != null && i < ladder.size(); i++) {
                Record rung = ladder.get(i);
                if (rung == null || rising.numbers(rung).isEmpty()) {
                    continue;
                }
                double here = rising.numbers(rung).get(0);
                Double before = last.put(within.codes(rung) + " " + within.numbers(rung), here);
                if (before != null && here <= before) {
                    context.disableDefaultConstraintViolation();
                    context.buildConstraintViolationWithTemplate("a number above " + before + ", the rung before it")
                            .addPropertyNode(by)
                            .inIterable()
                            .atIndex(i)
                            .addConstraintViolation();
                    valid = false;
                }
            }
            return valid;
        }
    }
}
