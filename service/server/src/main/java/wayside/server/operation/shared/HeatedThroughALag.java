package wayside.server.operation.shared;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A battery that is always as warm as the air can't be heated. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = HeatedThroughALagCheck.class)
public @interface HeatedThroughALag {
    String message() default "more than 0 beside a heater: a battery that is always as warm as the air can't be heated";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
