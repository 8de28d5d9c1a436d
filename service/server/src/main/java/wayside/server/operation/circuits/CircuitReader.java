package wayside.server.operation.circuits;

import java.util.Objects;
import java.util.Optional;
import wayside.server.operation.shared.Given;
import wayside.server.operation.shared.RuleSetCode;
import wayside.server.operation.shared.SystemReader;
import wayside.sizing.brief.At;
import wayside.sizing.brief.CircuitCurrent;
import wayside.sizing.brief.CircuitFeed;
import wayside.sizing.brief.CircuitRun;

/** A circuit of a request as the brief wants it. */
public final class CircuitReader {
    private CircuitReader() {}

    public static CircuitRun read(At at, CircuitInput circuit) {
        return new CircuitRun(
                at,
                circuit.name(),
                current(circuit),
                Optional.ofNullable(circuit.continuous()),
                circuit.lengthM(),
                Given.number(circuit.voltageV()),
                Given.number(circuit.voltageDropLimitPercent()),
                Given.number(circuit.insulationC()),
                Given.number(circuit.ambientC()),
                Given.whole(circuit.bundledConductors()),
                Optional.ofNullable(circuit.engineSpace()),
                Given.map(circuit.rules(), RuleSetCode::code),
                feed(at, circuit));
    }

    private static CircuitCurrent current(CircuitInput circuit) {
        return circuit.currentA() != null
                ? new CircuitCurrent.Amps(circuit.currentA())
                : new CircuitCurrent.Watts(Objects.requireNonNull(circuit.powerW()));
    }

    private static CircuitFeed feed(At at, CircuitInput circuit) {
        if (circuit.prospectiveShortCircuitA() != null) {
            return new CircuitFeed.ShortCircuit(circuit.prospectiveShortCircuitA());
        }
        BankInput bank = circuit.bank();
        return bank == null
                ? new CircuitFeed.Branch()
                : new CircuitFeed.Bank(
                        at.field("bank"),
                        SystemReader.chemistry(bank.chemistry()),
                        bank.capacityAh(),
                        Given.number(bank.coldCrankingA()));
    }
}
