package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.charging.AlternatorCharger;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.SizedCircuit;

/** What a system is short of. */
final class SystemShortfalls {
    private static final double HIGHEST_BUS_V = 48;

    private SystemShortfalls() {}

    static List<Shortfall> of(
            Site site,
            BankChoice battery,
            ArrayNeed arrayNeed,
            Optional<ArrayChoice> array,
            Chargers chargers,
            Optional<InverterChoice> inverter,
            SystemMass mass,
            List<SizedCircuit> circuits) {
        List<Shortfall> shortfalls = new ArrayList<>();
        shortfalls.addAll(battery.shortfalls(site));
        shortfalls.addAll(ArrayChoice.shortfalls(site, arrayNeed, array));
        chargers.alternator().flatMap(AlternatorCharger::shortfall).ifPresent(shortfalls::add);
        inverter.flatMap(InverterChoice::shortfall).ifPresent(shortfalls::add);
        inverter.flatMap(chosen -> chosen.notMade(site)).ifPresent(shortfalls::add);
        mass.shortfall(site).ifPresent(shortfalls::add);
        for (SizedCircuit circuit : circuits) {
            if (circuit instanceof SizedCircuit.NotFeasible failed) {
                shortfalls.add(new Shortfall(
                        withHigherVoltage(failed.shortfall().message(), site),
                        failed.shortfall().needed(),
                        failed.shortfall().available()));
            }
        }
        return shortfalls;
    }

    /** Where less current would do, a bus of twice the voltage is a way out. */
    private static Message withHigherVoltage(Message message, Site site) {
        double volts = site.busVoltageV().value();
        return volts < HIGHEST_BUS_V && message.code().findSlot("higherVoltage").isPresent()
                ? message.with(Parameter.number("higherVoltage", 2 * volts, Unit.VOLT))
                : message;
    }
}
