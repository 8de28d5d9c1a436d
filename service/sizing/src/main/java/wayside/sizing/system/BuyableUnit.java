package wayside.sizing.system;

import wayside.sizing.brief.UnitSize;
import wayside.sizing.sizes.NextSize;
import wayside.sizing.sizes.SizeFigure;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Unit;

/**
 * A self-contained unit that exists.
 *
 * @param energyWh rated [Wh]
 * @param massKg of it
 */
public record BuyableUnit(UnitSize size, Derived energyWh, Derived massKg) {
    private static final NamedOperation NEXT =
            NextSize.operation("the self-contained units that run, start and take as much as is asked for");

    static BuyableUnit of(UnitSize size, Derived neededWh) {
        return new BuyableUnit(
                size,
                NEXT.value("self-contained unit: rated energy", size.energyWh(), Unit.WATT_HOUR, neededWh.as("E")),
                SizeFigure.massKg(size, "self-contained unit: mass"));
    }
}
