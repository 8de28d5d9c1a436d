package wayside.server.operation.endurance;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import wayside.server.operation.shared.StayInput;

/** Reckons how long a simulation would be. */
public final class SimulatedHoursCheck implements ConstraintValidator<SimulatedHours, EnduranceRequest> {
    private long limit;

    @Override
    public void initialize(SimulatedHours rule) {
        limit = rule.value();
    }

    @Override
    public boolean isValid(EnduranceRequest request, ConstraintValidatorContext context) {
        Integer runs = request.runs();
        if (runs == null || request.trip() == null || request.trip().stays() == null) {
            return true;
        }
        long hours = 0;
        for (StayInput stay : request.trip().stays()) {
            // Nights are null here when they were themselves at fault.
            hours += stay == null || stay.nights() == null ? 0 : 24L * stay.nights();
        }
        if (hours == 0 || runs * hours <= limit) {
            return true;
        }
        context.disableDefaultConstraintViolation();
        context.buildConstraintViolationWithTemplate(
                        "at most " + limit / hours + " for a trip of " + hours / 24 + " nights")
                .addPropertyNode("runs")
                .addConstraintViolation();
        return false;
    }
}
