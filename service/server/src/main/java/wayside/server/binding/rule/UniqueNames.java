package wayside.server.binding.rule;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** No two elements of the list bear the same name. */
@Target(ElementType.FIELD)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = UniqueNamesCheck.class)
public @interface UniqueNames {

    String message() default "a name that no other element of the list has";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
