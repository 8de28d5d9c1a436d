package wayside.sizing.inverter;

import java.util.Arrays;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.demand.SupplyDemand;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
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
        Derived required = Derived.computed(
                "inverter: continuous output needed",
                ac.peakPowerW().value() * MARGIN,
                Unit.WATT,
                Formula.commonPractice("P = P_ac m"),
                ac.peakPowerW().as("P_ac"),
                margin.as("m"));
        if (spec.continuousW().isPresent()) {
            Derived given = Derived.given(
                    "inverter: continuous rating", spec.continuousW().getAsDouble(), Unit.WATT, spec.at("continuousW"));
            return new InverterRating(required, given, surge(spec, given));
        }
        Derived chosen = Derived.computed(
                "inverter: continuous rating",
                nextRating(required.value(), ac.surgePowerW().value()),
                Unit.WATT,
                Formula.commonPractice("next common rating that covers P, and S within twice its rating"),
                required.as("P"),
                ac.surgePowerW().as("S"));
        return new InverterRating(required, chosen, surge(spec, chosen));
    }

    private static Derived surge(InverterSpec spec, Derived continuous) {
        if (spec.surgeW().isPresent()) {
            return Derived.given(
                    "inverter: short-time rating", spec.surgeW().getAsDouble(), Unit.WATT, spec.at("surgeW"));
        }
        Derived factor = Derived.byDefault(
                "inverter: short-time rating as a multiple of the continuous one",
                COMMON_SURGE_FACTOR,
                Unit.COUNT,
                spec.at("surgeW"),
                "Most inverters give about twice their rating for a few seconds; the data sheet decides",
                Source.commonPractice());
        return Derived.computed(
                "inverter: short-time rating",
                continuous.value() * COMMON_SURGE_FACTOR,
                Unit.WATT,
                Formula.commonPractice("S = f P"),
                factor.as("f"),
                continuous.as("P"));
    }

    private static double nextRating(double requiredW, double surgeW) {
        double least = Math.max(requiredW, surgeW / COMMON_SURGE_FACTOR);
        return Arrays.stream(COMMON_RATINGS_W)
                .filter(rating -> rating >= least)
                .findFirst()
                .orElseGet(() -> Math.ceil(least / STACK_STEP_W) * STACK_STEP_W);
    }
}
