package wayside.server.mapping;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.hibernate.validator.HibernateValidatorConfiguration;
import org.hibernate.validator.cfg.ConstraintMapping;
import org.jspecify.annotations.Nullable;
import wayside.server.api.MonthInput;
import wayside.server.api.PlaceInput;
import wayside.server.api.SkyInput;
import wayside.server.api.SolarYieldRequest;
import wayside.server.api.StayInput;
import wayside.server.api.rule.PossibleSky;
import wayside.sizing.SolarYieldSizer;

/** Holds a sky that is given to what falls above the atmosphere there, which the core knows. */
final class MostSunshine {
    private static final String FIELD = "dailyIrradiationKwhM2";

    private static final int MONTHS = 12;
    private static final double POLE = 90;

    private MostSunshine() {}

    /** Makes it known who checks the rule. */
    static void addTo(HibernateValidatorConfiguration configuration) {
        ConstraintMapping mapping = configuration.createConstraintMapping();
        mapping.constraintDefinition(PossibleSky.class)
                .validatedBy(OfAStay.class)
                .validatedBy(OfAYield.class);
        configuration.addMapping(mapping);
    }

    /** What is accepted instead, where it is too much. A place or month that is itself at fault is passed over. */
    private static Optional<String> fault(@Nullable PlaceInput place, @Nullable Integer month, @Nullable SkyInput sky) {
        if (place == null || sky == null || month == null || month < 1 || month > MONTHS || !isOnEarth(place)) {
            return Optional.empty();
        }
        Double given = sky.dailyIrradiationKwhM2();
        BigDecimal most = BigDecimal.valueOf(SolarYieldSizer.mostKwhM2(place.latitude(), month))
                .setScale(2, RoundingMode.CEILING);
        if (given == null || given <= most.doubleValue()) {
            return Optional.empty();
        }
        return Optional.of(
                most.signum() == 0
                        ? "0: the sun does not rise there in month " + month
                        : "a number from 0 to " + most.toPlainString()
                                + ", the kWh/m2 that fall above the atmosphere there in month " + month);
    }

    private static boolean isOnEarth(PlaceInput place) {
        return place.latitude() != null && Math.abs(place.latitude()) <= POLE;
    }

    /** The month of a stay. */
    public static final class OfAStay implements ConstraintValidator<PossibleSky, StayInput> {
        @Override
        public boolean isValid(StayInput stay, ConstraintValidatorContext context) {
            Optional<String> fault = fault(stay.place(), stay.month(), stay.sky());
            fault.ifPresent(accepted -> {
                context.disableDefaultConstraintViolation();
                context.buildConstraintViolationWithTemplate(accepted)
                        .addPropertyNode("sky")
                        .addPropertyNode(FIELD)
                        .addConstraintViolation();
            });
            return fault.isEmpty();
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
                Optional<String> fault =
                        month == null ? Optional.empty() : fault(request.place(), month.month(), month.sky());
                if (fault.isPresent()) {
                    valid = false;
                    context.buildConstraintViolationWithTemplate(fault.get())
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
