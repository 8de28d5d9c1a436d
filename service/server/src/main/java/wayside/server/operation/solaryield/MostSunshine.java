package wayside.server.operation.solaryield;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.hibernate.validator.HibernateValidatorConfiguration;
import org.hibernate.validator.cfg.ConstraintMapping;
import org.hibernate.validator.constraintvalidation.HibernateConstraintValidatorContext;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.TooMuch;
import wayside.server.binding.rule.PossibleSky;
import wayside.server.operation.shared.PlaceInput;
import wayside.server.operation.shared.SkyInput;
import wayside.server.operation.shared.StayInput;
import wayside.sizing.SolarYieldSizer;

/** Holds a sky that is given to what falls above the atmosphere there, which the core knows. */
public final class MostSunshine {
    private static final String FIELD = "dailyIrradiationKwhM2";

    private static final int MONTHS = 12;
    private static final double POLE = 90;

    private MostSunshine() {}

    /** Makes it known who checks the rule. */
    public static void addTo(HibernateValidatorConfiguration configuration) {
        ConstraintMapping mapping = configuration.createConstraintMapping();
        mapping.constraintDefinition(PossibleSky.class)
                .validatedBy(OfAStay.class)
                .validatedBy(OfAYield.class);
        configuration.addMapping(mapping);
    }

    /** The most that is accepted, where it is too much. A place or month that is itself at fault is passed over. */
    private static Optional<BigDecimal> exceeded(
            @Nullable PlaceInput place, @Nullable Integer month, @Nullable SkyInput sky) {
        if (place == null || sky == null || month == null || month < 1 || month > MONTHS || !isOnEarth(place)) {
            return Optional.empty();
        }
        Double given = sky.dailyIrradiationKwhM2();
        BigDecimal most = BigDecimal.valueOf(SolarYieldSizer.mostKwhM2(place.latitude(), month))
                .setScale(2, RoundingMode.CEILING);
        return given == null || given <= most.doubleValue() ? Optional.empty() : Optional.of(most);
    }

    /** Begins to say what is accepted. */
    private static ConstraintValidatorContext.ConstraintViolationBuilder accepting(
            BigDecimal most, ConstraintValidatorContext context) {
        context.unwrap(HibernateConstraintValidatorContext.class)
                .withDynamicPayload(
                        new TooMuch(most.doubleValue(), "More than falls above the atmosphere there in that month."));
        return context.buildConstraintViolationWithTemplate(
                most.signum() == 0
                        ? "0: the sun does not rise there in that month"
                        : "a number from 0 to " + most.toPlainString());
    }

    private static boolean isOnEarth(PlaceInput place) {
        return place.latitude() != null && Math.abs(place.latitude()) <= POLE;
    }

    /** The month of a stay. */
    public static final class OfAStay implements ConstraintValidator<PossibleSky, StayInput> {
        @Override
        public boolean isValid(StayInput stay, ConstraintValidatorContext context) {
            Optional<BigDecimal> most = exceeded(stay.place(), stay.month(), stay.sky());
            context.disableDefaultConstraintViolation();
            most.ifPresent(accepted -> accepting(accepted, context)
                    .addPropertyNode("sky")
                    .addPropertyNode(FIELD)
                    .addConstraintViolation());
            return most.isEmpty();
        }
    }

    /** The months of a solar yield, each for itself. */
    public static final class OfAYield implements ConstraintValidator<PossibleSky, SolarYieldRequest> {
        @Override
        public boolean isValid(SolarYieldRequest request, ConstraintValidatorContext context) {
            List<@Nullable MonthInput> months = request.months() == null ? List.of() : request.months();
            context.disableDefaultConstraintViolation();
            boolean valid = true;
            for (int i = 0; i < months.size(); i++) {
                MonthInput month = months.get(i);
                Optional<BigDecimal> most =
                        month == null ? Optional.empty() : exceeded(request.place(), month.month(), month.sky());
                if (most.isPresent()) {
                    valid = false;
                    accepting(most.get(), context)
                            .addPropertyNode("months")
                            .addPropertyNode("sky")
                            .inIterable()
                            .atIndex(i)
                            .addPropertyNode(FIELD)
                            .addConstraintViolation();
                }
            }
            return valid;
        }
    }
}
