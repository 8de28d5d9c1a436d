package wayside.sizing.system;

import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.ConverterSize;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.inverter.DcConverter;
import wayside.sizing.sizes.NextSize;
import wayside.sizing.sizes.Pieces;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.ShortfallCode;
import wayside.sizing.trace.Unit;

/**
 * The converter of a recommendation, from the bus to DC loads of another voltage. It bears no surge, so it is sized for all loads
 * running and the hardest starting.
 *
 * @param converter what it takes for itself
 * @param neededA at its output [A]
 * @param count of equal ones that share out the loads
 * @param ratedA output of each [A]
 * @param buyable those that are made; empty where none is
 */
public record ConverterChoice(
        DcConverter converter,
        Derived neededA,
        Derived count,
        Derived ratedA,
        Optional<Pieces<ConverterSize>> buyable) {
    private static final int MOST = 4;
    private static final Expression NEEDED = Expression.commonPractice("I = S / V");
    private static final Expression AS_NEEDED = Expression.definition("I_each = I");
    private static final Expression ONE = Expression.definition("c = 1");
    private static final NamedOperation NEXT = NextSize.operation("the converters that exist");

    static Optional<ConverterChoice> of(Site site, EnergyBudget budget) {
        return budget.converter().map(converter -> of(site, budget, converter));
    }

    private static ConverterChoice of(Site site, EnergyBudget budget, DcConverter converter) {
        Derived needed = NEEDED.value(
                "DC converter: output needed",
                Unit.AMPERE,
                budget.demand().dc().surgePowerW().as("S"),
                converter.loadsVoltageV().as("V"));
        List<ConverterSize> ladder = site.sizes().converters().stream()
                .filter(size -> size.inputV() == site.busVoltageV().value()
                        && size.outputV() == converter.loadsVoltageV().value())
                .toList();
        Optional<Pieces<ConverterSize>> buyable =
                NextSize.atLeast(needed.value(), Pieces.of(ladder, ConverterSize::currentA, size -> MOST));
        return new ConverterChoice(
                converter,
                needed,
                buyable.map(pieces -> NEXT.value("DC converters", pieces.count(), Unit.COUNT, needed.as("I")))
                        .orElseGet(() -> ONE.value("DC converters", Unit.COUNT)),
                buyable.map(pieces -> NEXT.value(
                                "DC converter: rated output", pieces.size().currentA(), Unit.AMPERE, needed.as("I")))
                        .orElseGet(() -> AS_NEEDED.value("DC converter: rated output", Unit.AMPERE, needed.as("I"))),
                buyable);
    }

    /** Loads that no converter of the ladder feeds. */
    public Optional<Shortfall> notMade() {
        return buyable.isPresent()
                ? Optional.empty()
                : Optional.of(new Shortfall(Message.of(ShortfallCode.CONVERTER_NOT_MADE), neededA, none()));
    }

    private static Derived none() {
        return Expression.definition("I = 0").value("DC converter: output of those that are made", Unit.AMPERE);
    }
}
