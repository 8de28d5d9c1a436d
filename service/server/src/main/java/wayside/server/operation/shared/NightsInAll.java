package wayside.server.operation.shared;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The stays together have no more nights than this. */
@Target(ElementType.FIELD)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = NightsInAllCheck.class)
public @interface NightsInAll {
    int value();

    String message() default "fewer nights in all";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
