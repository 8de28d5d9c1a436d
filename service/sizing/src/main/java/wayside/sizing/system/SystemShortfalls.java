package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wayside.sizing.charging.AlternatorCharger;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.wiring.SizedCircuit;

/** What a system is short of. */
final class SystemShortfalls {
    private SystemShortfalls() {}

    static List<Shortfall> of(
            Site site,
            BankChoice battery,
            ArrayNeed arrayNeed,
            Chargers chargers,
            Optional<InverterChoice> inverter,
            List<SizedCircuit> circuits) {
        List<Shortfall> shortfalls = new ArrayList<>();
        battery.shortfall(site).ifPresent(shortfalls::add);
        ArrayChoice.shortfall(site, arrayNeed).ifPresent(shortfalls::add);
        chargers.alternator().flatMap(AlternatorCharger::shortfall).ifPresent(shortfalls::add);
        inverter.flatMap(InverterChoice::shortfall).ifPresent(shortfalls::add);
        for (SizedCircuit circuit : circuits) {
            if (circuit instanceof SizedCircuit.NotFeasible failed) {
                shortfalls.add(new Shortfall(
                        failed.shortfall().code(),
                        failed.shortfall().text() + higherVoltage(site),
                        failed.shortfall().needed(),
                        failed.shortfall().available()));
            }
        }
        return shortfalls;
    }

    private static String higherVoltage(Site site) {
        return site.busVoltageV().value() < 48
                ? String.format(
                        Locale.ROOT,
                        " A bus of %.0f V halves the current.",
                        2 * site.busVoltageV().value())
                : "";
    }
}
