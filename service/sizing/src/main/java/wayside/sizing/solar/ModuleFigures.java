package wayside.sizing.solar;

import java.util.Optional;
import wayside.sizing.brief.SolarModule;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/**
 * A solar module by its label, traced.
 *
 * @param openCircuitV at 25 C [V]
 * @param workingV at its best point and 25 C [V]
 * @param shortCircuitA [A]
 * @param voltagePerK temperature coefficient of the open-circuit voltage [1/K], negative; empty when unknown
 */
public record ModuleFigures(
        Derived openCircuitV, Derived workingV, Derived shortCircuitA, Optional<Derived> voltagePerK) {

    /**
     * A module as the request states it.
     *
     * @param path JSON Pointer of the module
     */
    public static ModuleFigures of(SolarModule module, String path) {
        return new ModuleFigures(
                Derived.given("module: open-circuit voltage", module.openCircuitV(), Unit.VOLT, path + "/openCircuitV"),
                Derived.given("module: working voltage", module.workingV(), Unit.VOLT, path + "/workingV"),
                Derived.given(
                        "module: short-circuit current", module.shortCircuitA(), Unit.AMPERE, path + "/shortCircuitA"),
                module.voltagePerK().isPresent()
                        ? Optional.of(Derived.given(
                                "module: voltage per kelvin",
                                module.voltagePerK().getAsDouble(),
                                Unit.PER_KELVIN,
                                path + "/voltagePerK"))
                        : Optional.empty());
    }
}
