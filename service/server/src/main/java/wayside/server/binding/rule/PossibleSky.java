package wayside.server.binding.rule;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * No month is given more sunshine than falls above the atmosphere there. What that is the reader of a request asks the core; the
 * contract only knows that it is so.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = {})
public @interface PossibleSky {
    String message() default "no more than falls above the atmosphere there";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
