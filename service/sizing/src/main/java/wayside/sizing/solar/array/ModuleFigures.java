package wayside.sizing.solar.array;

import java.util.Optional;
import wayside.sizing.brief.SolarModule;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * A solar module by its label, traced.
 *
 * @param openCircuitV at 25 C [V]
 * @param workingV at its best point and 25 C [V]
 * @param shortCircuitA [A]
 * @param coefficientField JSON Pointer of the field that states the coefficient; empty when the request has none
 * @param voltagePerK temperature coefficient of the open-circuit voltage [1/K], negative; empty when unknown
 */
public record ModuleFigures(
        Derived openCircuitV,
        Derived workingV,
        Derived shortCircuitA,
        Optional<String> coefficientField,
        Optional<Derived> voltagePerK) {

    /**
     * A module as the request states it.
     */
    public static ModuleFigures of(SolarModule module) {
        return new ModuleFigures(
                Derived.given(
                        "module: open-circuit voltage", module.openCircuitV(), Unit.VOLT, module.at("openCircuitV")),
                Derived.given("module: working voltage", module.workingV(), Unit.VOLT, module.at("workingV")),
                Derived.given(
                        "module: short-circuit current",
                        module.shortCircuitA(),
                        Unit.AMPERE,
                        module.at("shortCircuitA")),
                Optional.of(module.at("voltagePerK")),
                module.voltagePerK().isPresent()
                        ? Optional.of(Derived.given(
                                "module: voltage per kelvin",
                                module.voltagePerK().getAsDouble(),
                                Unit.PER_KELVIN,
                                module.at("voltagePerK")))
                        : Optional.empty());
    }

    /** A coefficient that the label does not state: a default where the request could have given it. */
    public Derived coefficientLeftOpen(String label, double perK, String reason) {
        return Derived.leftOpen(label, perK, Unit.PER_KELVIN, coefficientField, reason, Source.commonPractice());
    }
}
