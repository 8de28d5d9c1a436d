package wayside.server.operation.shared;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Adds up the nights of the stays. */
public final class NightsInAllCheck implements ConstraintValidator<NightsInAll, List<@Nullable StayInput>> {
    private int limit;

    @Override
    public void initialize(NightsInAll rule) {
        limit = rule.value();
    }

    @Override
    public boolean isValid(@Nullable List<@Nullable StayInput> stays, ConstraintValidatorContext context) {
        if (stays == null) {
            return true;
        }
        long nights = 0;
        for (StayInput stay : stays) {
            // Nights are null here when they were themselves at fault.
            nights += stay == null || stay.nights() == null ? 0 : stay.nights();
        }
        if (nights <= limit) {
            return true;
        }
        context.disableDefaultConstraintViolation();
        context.buildConstraintViolationWithTemplate(
                        "at most " + limit + " nights in all stays together, not " + nights)
                .addConstraintViolation();
        return false;
    }
}
