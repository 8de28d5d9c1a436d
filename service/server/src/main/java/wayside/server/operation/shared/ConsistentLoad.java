package wayside.server.operation.shared;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The figures of a load do not contradict each other. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = ConsistentLoadCheck.class)
public @interface ConsistentLoad {

    String message() default "figures that agree";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
