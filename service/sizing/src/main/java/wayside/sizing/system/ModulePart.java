package wayside.sizing.system;

import java.util.Optional;
import wayside.sizing.brief.ModuleSize;
import wayside.sizing.sizes.SizeFigure;
import wayside.sizing.solar.array.ModuleFigures;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** A module that exists, in traced figures. */
final class ModulePart {
    private ModulePart() {}

    static ModuleFigures figures(ModuleSize module) {
        return new ModuleFigures(
                of(module, "open-circuit voltage", module.openCircuitV(), Unit.VOLT, "openCircuitV"),
                of(module, "working voltage", module.workingV(), Unit.VOLT, "workingV"),
                of(module, "short-circuit current", module.shortCircuitA(), Unit.AMPERE, "shortCircuitA"),
                Optional.empty(),
                Optional.empty());
    }

    static Derived powerW(ModuleSize module) {
        return of(module, "rated power", module.powerW(), Unit.WATT, "powerW");
    }

    static Derived largestSeriesFuseA(ModuleSize module) {
        return of(module, "largest series fuse", module.largestSeriesFuseA(), Unit.AMPERE, "largestSeriesFuseA");
    }

    static Derived lengthMm(ModuleSize module) {
        return of(module, "length", module.box().lengthMm(), Unit.MILLIMETRE, "lengthMm");
    }

    static Derived widthMm(ModuleSize module) {
        return of(module, "width", module.box().widthMm(), Unit.MILLIMETRE, "widthMm");
    }

    static Derived of(ModuleSize module, String what, double value, Unit unit, String field) {
        return SizeFigure.of(module, "module: " + what, value, unit, field);
    }
}
