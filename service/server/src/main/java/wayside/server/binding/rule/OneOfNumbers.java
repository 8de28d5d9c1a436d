package wayside.server.binding.rule;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** One of a few numbers. */
@Target(ElementType.FIELD)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = OneOfNumbersCheck.class)
public @interface OneOfNumbers {
    double[] value();

    String message() default "one of a few numbers";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
