package wayside.sizing.inverter;

import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.InverterSize;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.demand.SupplyDemand;
import wayside.sizing.sizes.NextSize;
import wayside.sizing.sizes.Pieces;
import wayside.sizing.sizes.SizeFigure;
import wayside.sizing.sizes.SizeTables;
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
 * @param leastW smallest continuous rating that will do, exactly [W]
 * @param buyable the inverters that it is; empty when it was given, or where none is made so large
 */
public record InverterRating(
        Derived requiredW,
        Derived continuousW,
        Derived surgeW,
        Derived leastW,
        Optional<Pieces<InverterSize>> buyable) {
    /** Room above what is listed today. Design guides ask for 1.25 to 1.3. */
    private static final double MARGIN = 1.25;

    /** A rating has this much short-time output, for a few seconds. */
    private static final double COMMON_SURGE_FACTOR = 2.0;

    private static final String CONTINUOUS = "inverter: continuous rating";
    private static final String SURGE = "inverter: short-time rating";

    private static final Expression REQUIRED = Expression.commonPractice("P = P_ac m");
    private static final Expression LEAST = Expression.commonPractice("P_least = max(P, S / f)");
    private static final Expression SHORT_TIME = Expression.commonPractice("S = f P");
    private static final Expression COUNT = Expression.definition("n = P / P_1");
    private static final Expression TOGETHER = Expression.definition("S = n S_1");
    private static final Expression NOT_MADE = Expression.definition("P = P_least");
    private static final NamedOperation NEXT_RATING =
            NextSize.operation("the inverters, one or as many as work as one, that bear the start S,");
    private static final NamedOperation LARGEST = NamedOperation.of(
            NamedOperation.Kind.NEXT_SIZE,
            "the largest of the inverters, as many as work as one; P_least is more",
            Source.commonPractice());

    /** Of the usual sizes. */
    public static InverterRating of(SupplyDemand ac, InverterSpec spec) {
        return of(ac, spec, List.of());
    }

    /**
     * @param ac what the loads behind the inverter ask for
     * @param spec what is known of it
     * @param sizes that are to be had; the usual ones if empty
     */
    public static InverterRating of(SupplyDemand ac, InverterSpec spec, List<InverterSize> sizes) {
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
        Derived least = LEAST.value(
                "inverter: smallest continuous rating that will do",
                Unit.WATT,
                required.as("P"),
                ac.surgePowerW().as("S"),
                factor.as("f"));
        Optional<Pieces<InverterSize>> buyable = spec.continuousW().isPresent()
                ? Optional.empty()
                : next(required.value(), ac.surgePowerW().value(), ladder(sizes));
        Derived continuous = spec.continuousW().isPresent()
                ? Derived.given(CONTINUOUS, spec.continuousW().getAsDouble(), Unit.WATT, spec.at("continuousW"))
                : buyable.<Derived>map(pieces -> NEXT_RATING.value(
                                CONTINUOUS,
                                pieces.total(),
                                Unit.WATT,
                                least.as("P_least"),
                                ac.surgePowerW().as("S")))
                        .orElseGet(() -> NOT_MADE.value(CONTINUOUS, Unit.WATT, least.as("P_least")));
        return new InverterRating(required, continuous, surge(spec, continuous, factor, buyable), least, buyable);
    }

    private static List<Pieces<InverterSize>> ladder(List<InverterSize> sizes) {
        return Pieces.of(
                sizes.isEmpty() ? SizeTables.usual().inverters() : sizes,
                InverterSize::continuousW,
                InverterSize::mostTogether);
    }

    private static Optional<Pieces<InverterSize>> next(
            double requiredW, double startW, List<Pieces<InverterSize>> all) {
        return NextSize.least(
                all,
                pieces -> NextSize.reaches(pieces.total(), requiredW)
                        && NextSize.reaches(pieces.count() * pieces.size().surgeW(), startW),
                Pieces::total,
                Pieces::count);
    }

    /** The most that is made, for one that is not [W]. */
    public Derived largestW(List<InverterSize> sizes) {
        double largest = ladder(sizes).stream().mapToDouble(Pieces::total).max().orElse(0);
        return LARGEST.value("inverter: largest that is made", largest, Unit.WATT, leastW.as("P_least"));
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

    private static Derived surge(
            InverterSpec spec, Derived continuous, Derived factor, Optional<Pieces<InverterSize>> buyable) {
        if (spec.surgeW().isEmpty() && buyable.isPresent()) {
            return together(buyable.get(), continuous);
        }
        return spec.surgeW().isPresent()
                ? Derived.given(SURGE, spec.surgeW().getAsDouble(), Unit.WATT, spec.at("surgeW"))
                : SHORT_TIME.value(SURGE, Unit.WATT, factor.as("f"), continuous.as("P"));
    }

    private static Derived together(Pieces<InverterSize> pieces, Derived continuous) {
        Derived each = SizeFigure.of(
                pieces.size(),
                "inverter: short-time rating of one",
                pieces.size().surgeW(),
                Unit.WATT,
                "surgeW");
        return TOGETHER.value(SURGE, Unit.WATT, count(pieces, continuous).as("n"), each.as("S_1"));
    }

    /** How many work as one. */
    private static Derived count(Pieces<InverterSize> pieces, Derived continuous) {
        Derived each = SizeFigure.of(
                pieces.size(),
                "inverter: continuous rating of one",
                pieces.size().continuousW(),
                Unit.WATT,
                "continuousW");
        return COUNT.value("inverters", Unit.COUNT, continuous.as("P"), each.as("P_1"));
    }
}
