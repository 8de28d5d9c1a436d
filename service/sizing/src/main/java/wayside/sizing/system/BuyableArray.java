package wayside.sizing.system;

import wayside.sizing.brief.ModuleSize;
import wayside.sizing.sizes.NextSize;
import wayside.sizing.sizes.SizeFigure;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Unit;

/**
 * An array of whole modules in equal strings.
 *
 * @param option what it is made of
 * @param seriesCount modules in each string
 * @param parallelCount strings
 * @param count of modules
 * @param modulePowerW rated, of each [W]
 * @param powerW rated, of all [W]
 * @param areaM2 of all
 * @param roofTakes modules of this size
 * @param massKg of all
 * @param lengthMm of each
 * @param widthMm of each
 */
public record BuyableArray(
        StringOption option,
        Derived seriesCount,
        Derived parallelCount,
        Derived count,
        Derived modulePowerW,
        Derived powerW,
        Derived areaM2,
        Derived roofTakes,
        Derived massKg,
        Derived lengthMm,
        Derived widthMm) {
    static final NamedOperation NEXT =
            NextSize.operation("the equal strings of whole modules that the roof takes and a charge controller suits");
    private static final Expression COUNT = Expression.definition("m = n p");
    private static final Expression WHOLE = Expression.definition("P = n p P_module");
    private static final Expression AREA = Expression.definition("A = n p l w / 1000000");
    private static final Expression MASS = Expression.definition("m = n p m_1");

    /**
     * @param how it was chosen
     * @param ground by what
     */
    public static BuyableArray of(Site site, StringOption option, NamedOperation how, Input... ground) {
        ModuleSize module = option.module();
        Derived series = how.value("string: modules in series", option.series(), Unit.COUNT, ground);
        Derived parallel = how.value("array: strings", option.parallel(), Unit.COUNT, ground);
        Derived each = ModulePart.powerW(module);
        Derived length = ModulePart.lengthMm(module);
        Derived width = ModulePart.widthMm(module);
        Input n = series.as("n");
        Input p = parallel.as("p");
        return new BuyableArray(
                option,
                series,
                parallel,
                COUNT.value("array: modules", Unit.COUNT, n, p),
                each,
                WHOLE.value("rated power of the array", Unit.WATT, n, p, each.as("P_module")),
                AREA.value("area of the array", Unit.SQUARE_METRE, n, p, length.as("l"), width.as("w")),
                RoofRoom.of(site).takes(length, width),
                MASS.value(
                        "mass of the modules",
                        Unit.KILOGRAM,
                        n,
                        p,
                        SizeFigure.massKg(module, "module: mass").as("m_1")),
                length,
                width);
    }
}
