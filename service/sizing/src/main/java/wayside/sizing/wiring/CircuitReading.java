package wayside.sizing.wiring;

import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.brief.CircuitCurrent;
import wayside.sizing.brief.CircuitFeed;
import wayside.sizing.brief.CircuitRun;
import wayside.sizing.storage.BusVoltage;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Turns a circuit as the request states it into traced values, each with the path of its field. */
public final class CircuitReading {
    private static final Derived LOWEST_SHARE = Derived.convention(
            "lowest voltage of a circuit, share of the nominal one",
            BusVoltage.LOWEST_SHARE,
            Unit.SHARE,
            "10.5 V on a 12 V bus, a lead-acid battery nearly empty: power takes most current then",
            Source.commonPractice());

    private static final Expression AT_LOWEST = Expression.definition("I = P / (k V)");

    private final CircuitRun run;

    private CircuitReading(CircuitRun run) {
        this.run = run;
    }

    /** @throws IllegalArgumentException for a rule set that there is not */
    public static CircuitTask of(CircuitRun run) {
        return new CircuitReading(run).task();
    }

    private CircuitTask task() {
        Derived voltage = voltage();
        return new CircuitTask(
                run.name(),
                Optional.of(run.at()),
                current(voltage),
                Derived.given(label("length, one way"), run.lengthM(), Unit.METRE, run.at("lengthM")),
                voltage,
                highestVoltage(voltage),
                run.continuous(),
                given(
                        run.voltageDropLimitPercent(),
                        "voltage drop limit",
                        Unit.PERCENT,
                        run.at("voltageDropLimitPercent")),
                given(run.insulationC(), "insulation class", Unit.CELSIUS, run.at("insulationC")),
                given(run.ambientC(), "ambient around the cable", Unit.CELSIUS, run.at("ambientC")),
                bundled(),
                run.engineSpace(),
                run.rules().map(RuleSets::of),
                feed(voltage),
                CircuitDetails.NONE);
    }

    private Derived voltage() {
        return given(run.voltageV(), "nominal voltage", Unit.VOLT, run.at("voltageV"))
                .orElseGet(() -> Derived.byDefault(
                        label("nominal voltage"),
                        BusVoltage.NOMINAL_V,
                        Unit.VOLT,
                        run.at("voltageV"),
                        "What most camper circuits run at",
                        Source.commonPractice()));
    }

    private Derived current(Derived voltage) {
        if (run.current() instanceof CircuitCurrent.Watts watts) {
            Derived power = Derived.given(label("power"), watts.powerW(), Unit.WATT, run.at("powerW"));
            return AT_LOWEST.value(label("current"), Unit.AMPERE, power.as("P"), LOWEST_SHARE.as("k"), voltage.as("V"));
        }
        CircuitCurrent.Amps amps = (CircuitCurrent.Amps) run.current();
        return Derived.given(label("current"), amps.currentA(), Unit.AMPERE, run.at("currentA"));
    }

    private Optional<Derived> bundled() {
        return run.bundledConductors().isPresent()
                ? Optional.of(Derived.given(
                        label("conductors that run together"),
                        run.bundledConductors().getAsInt(),
                        Unit.COUNT,
                        run.at("bundledConductors")))
                : Optional.empty();
    }

    private Derived highestVoltage(Derived voltage) {
        return run.feed() instanceof CircuitFeed.Bank bank
                ? HighestVoltage.ofBank(run.name(), bank.chemistry(), voltage)
                : HighestVoltage.ofAnyBank(run.name(), voltage);
    }

    private Feed feed(Derived voltage) {
        if (run.feed() instanceof CircuitFeed.ShortCircuit known) {
            return new Feed.ShortCircuit(Derived.given(
                    label("prospective short-circuit current"),
                    known.currentA(),
                    Unit.AMPERE,
                    run.at("prospectiveShortCircuitA")));
        }
        return run.feed() instanceof CircuitFeed.Bank bank
                ? bank(bank, voltage)
                : new Feed.Branch(Optional.of(run.at("bank")));
    }

    private Feed bank(CircuitFeed.Bank bank, Derived voltage) {
        Derived capacity = Derived.given(
                label("capacity of the bank"), bank.capacityAh(), Unit.AMPERE_HOUR, bank.at("capacityAh"));
        Derived fault = BankFault.currentA(
                label("current the fuse must break"),
                bank.chemistry(),
                voltage,
                capacity,
                given(bank.coldCrankingA(), "cold cranking current", Unit.AMPERE, bank.at("coldCrankingA")),
                bank.chemistry().isLeadAcid()
                        ? Optional.of(bank.at("coldCrankingA"))
                        : Optional.of(run.at("prospectiveShortCircuitA")));
        return new Feed.Bank(capacity, fault, true);
    }

    private Optional<Derived> given(OptionalDouble value, String what, Unit unit, String field) {
        return value.isPresent()
                ? Optional.of(Derived.given(label(what), value.getAsDouble(), unit, field))
                : Optional.empty();
    }

    private String label(String what) {
        return run.name() + ": " + what;
    }
}
