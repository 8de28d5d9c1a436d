package wayside.server.operation.shared;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;

/** Holds the two temperatures of a heater against each other; one alone makes the other. */
public final class OnBelowOffCheck implements ConstraintValidator<OnBelowOff, BatteryHeaterInput> {
    @Override
    public boolean isValid(BatteryHeaterInput heater, ConstraintValidatorContext context) {
        Double on = heater.onBelowC();
        Double off = heater.offAboveC();
        if (on == null || off == null || on < off) {
            return true;
        }
        context.disableDefaultConstraintViolation();
        context.buildConstraintViolationWithTemplate("above the " + on + " C that it goes on at")
                .addPropertyNode("offAboveC")
                .addConstraintViolation();
        return false;
    }
}
