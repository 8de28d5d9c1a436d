package wayside.server.binding.rule;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reports each element whose name an earlier one has. */
public final class UniqueNamesCheck implements ConstraintValidator<UniqueNames, List<? extends @Nullable Named>> {
    @Override
    public boolean isValid(@Nullable List<? extends @Nullable Named> value, ConstraintValidatorContext context) {
        if (value == null) {
            return true;
        }
        context.disableDefaultConstraintViolation();
        Set<String> seen = new HashSet<>();
        boolean valid = true;
        for (int i = 0; i < value.size(); i++) {
            Named element = value.get(i);
            // The name is null here when it was itself at fault.
            if (element != null && element.name() != null && !seen.add(element.name())) {
                valid = false;
                context.buildConstraintViolationWithTemplate(context.getDefaultConstraintMessageTemplate())
                        .addPropertyNode("name")
                        .inIterable()
                        .atIndex(i)
                        .addConstraintViolation();
            }
        }
        return valid;
    }
}
