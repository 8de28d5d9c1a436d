package wayside.server.operation.shared;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;

/** Looks for a heater on a battery without a lag. */
public final class HeatedThroughALagCheck implements ConstraintValidator<HeatedThroughALag, BatteryPlaceInput> {
    @Override
    public boolean isValid(BatteryPlaceInput place, ConstraintValidatorContext context) {
        if (place.heater() == null || place.lagHours() == null || place.lagHours() > 0) {
            return true;
        }
        context.disableDefaultConstraintViolation();
        context.buildConstraintViolationWithTemplate(context.getDefaultConstraintMessageTemplate())
                .addPropertyNode("lagHours")
                .addConstraintViolation();
        return false;
    }
}
