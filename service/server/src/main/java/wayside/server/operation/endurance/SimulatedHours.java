package wayside.server.operation.endurance;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Runs times hours of the trip are no more than this. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = SimulatedHoursCheck.class)
public @interface SimulatedHours {
    long value();

    String message() default "fewer runs for so long a trip";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
