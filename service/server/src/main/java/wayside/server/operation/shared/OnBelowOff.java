package wayside.server.operation.shared;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A heater goes off at a higher temperature than it goes on at. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = OnBelowOffCheck.class)
public @interface OnBelowOff {
    String message() default "above onBelowC";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
