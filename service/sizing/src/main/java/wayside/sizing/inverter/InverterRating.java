package wayside.sizing.inverter;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.demand.SupplyDemand;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Continuous and short-time rating of the inverter that the AC loads need.
 *
 * @param requiredW continuous output the loads ask for, with margin [W]
 * @param continuousW the next common rating, or the one given [W]
 * @param surgeW short-time output [W]: what the starts ask for, or what was given
 */
public record InverterRating(Derived requiredW, Derived continuousW, Derived surgeW) {
    /** Sizes that the trade commonly stocks [W]. Common practice, no source. */
    private static final double[] COMMON_RATINGS_W = {
        150, 300, 400, 600, 800, 1000, 1200, 1500, 2000, 2500, 3000, 3500, 4000, 5000, 6000, 8000, 10000
    };

    /** Room above what is listed today. Design guides ask for 1.25 to 1.3. */
    private static final double MARGIN = 1.25;

    /** Above this common inverters are stacked, in steps of this size [W]. */
    private static final double STACK_STEP_W = 5000;

    /** A rating has this much short-time output, for a few seconds. */
    private static final double COMMON_SURGE_FACTOR = 2.0;

    private static final String CONTINUOUS = "inverter: continuous rating";
    private static final String SURGE = "inverter: short-time rating";

    private static final Expression REQUIRED = Expression.commonPractice("P = P_ac m");
    private static final Expression LEAST = Expression.commonPractice("P_least = max(P, S / f)");
    private static final Expression STACKED =
            Expression.commonPractice("P_r = ceil(P_least / P_step) P_step").with("P_step", STACK_STEP_W, Unit.WATT);
    private static final Expression SHORT_TIME = Expression.commonPractice("S = f P");
    private static final NamedOperation NEXT_RATING = NamedOperation.of(
            NamedOperation.Kind.NEXT_SIZE,
            "The smallest of the common ratings that is at least P_least: "
                    + Arrays.stream(COMMON_RATINGS_W)
                            .mapToObj(rating -> Long.toString(Math.round(rating)))
                            .collect(Collectors.joining(", "))
                    + " W",
            Source.commonPractice());

    /**
     * @param ac what the loads behind the inverter ask for
     * @param spec what is known of it
     */
    public static InverterRating of(SupplyDemand ac, InverterSpec spec) {
        Derived margin = Derived.byDefault(
                "inverter margin",
                MARGIN,
                Unit.COUNT,
                spec.at("continuousW"),
                "Room for a hot day and for one load more",
                Source.commonPractice());
        Derived required = REQUIRED.value(
                "inverter: continuous output needed", Unit.WATT, ac.peakPowerW().as("P_ac"), margin.as("m"));
        Derived factor = surgeFactor(spec);
        Derived continuous = spec.continuousW().isPresent()
                ? Derived.given(CONTINUOUS, spec.continuousW().getAsDouble(), Unit.WATT, spec.at("continuousW"))
                : chosen(required, ac.surgePowerW(), factor);
        return new InverterRating(required, continuous, surge(spec, continuous, factor));
    }

    private static Derived chosen(Derived required, Derived surge, Derived factor) {
        Derived least = LEAST.value(
                "inverter: smallest continuous rating that will do",
                Unit.WATT,
                required.as("P"),
                surge.as("S"),
                factor.as("f"));
        return Arrays.stream(COMMON_RATINGS_W)
                .filter(rating -> rating >= least.value())
                .mapToObj(rating -> NEXT_RATING.value(CONTINUOUS, rating, Unit.WATT, least.as("P_least")))
                .findFirst()
                .orElseGet(() -> STACKED.value(CONTINUOUS, Unit.WATT, least.as("P_least")));
    }

    /** A data sheet's figure for a start takes its place there; the loads' starts are judged by it all the same. */
    private static Derived surgeFactor(InverterSpec spec) {
        return Derived.leftOpen(
                "inverter: short-time rating as a multiple of the continuous one",
                COMMON_SURGE_FACTOR,
                Unit.COUNT,
                spec.surgeW().isPresent() ? Optional.empty() : Optional.of(spec.at("surgeW")),
                "Most inverters give about twice their rating for a few seconds; the data sheet decides",
                Source.commonPractice());
    }

    private static Derived surge(InverterSpec spec, Derived continuous, Derived factor) {
        return spec.surgeW().isPresent()
                ? Derived.given(SURGE, spec.surgeW().getAsDouble(), Unit.WATT, spec.at("surgeW"))
                : SHORT_TIME.value(SURGE, Unit.WATT, factor.as("f"), continuous.as("P"));
    }
}
