package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.brief.CircuitLengths;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.charging.AlternatorCharger;
import wayside.sizing.solar.StringWindow;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.CircuitSizing;
import wayside.sizing.wiring.Feed;
import wayside.sizing.wiring.SizedCircuit;

/** The cables and fuses between the parts of a system: battery first, then outward. */
final class MainCircuits {
    /** What goes out, loads and inverter, or what comes in from sun, engine and hookup. */
    private static final Expression MAIN = Expression.definition("I = max(sum(I_out), sum(I_in))");
    /** The highest voltage that a circuit is held to is 1.2 times its nominal one: for a string the open-circuit one. */
    private static final Expression STRING_V =
            Expression.commonPractice("V = V_cold / r").with("r", 1.2, Unit.COUNT);

    private static final Expression ALTERNATOR = Expression.definition("I = max(I_out, I_in)");
    private static final Expression SHORE = Expression.definition("I = P / V_c");
    private static final Expression LOADS = Expression.definition("I = P / V_low");

    private final BatteryBank bank;
    private final CircuitLengths lengths;
    private final CircuitDefaults defaults;
    private final Derived loadsA;
    private final Optional<InverterChoice> inverter;
    private final Optional<ArrayChoice> array;
    private final Chargers chargers;
    private final List<SizedCircuit> sized = new ArrayList<>();

    private MainCircuits(
            Site site,
            BatteryBank bank,
            Optional<InverterChoice> inverter,
            Optional<ArrayChoice> array,
            Chargers chargers) {
        this.bank = bank;
        this.lengths = site.brief().system().circuitLengthsM();
        this.defaults = CircuitDefaults.of(site.brief().system().rules());
        this.loadsA = loads(site.journey().highestDemand().budget(), bank);
        this.inverter = inverter;
        this.array = array;
        this.chargers = chargers;
    }

    static List<SizedCircuit> of(
            Site site,
            BatteryBank bank,
            Optional<InverterChoice> inverter,
            Optional<ArrayChoice> array,
            Chargers chargers) {
        return new MainCircuits(site, bank, inverter, array, chargers).all();
    }

    private List<SizedCircuit> all() {
        main();
        inverter.ifPresent(i -> add("inverter", "inverter", i.batteryCurrentA(), lengths.inverter(), 1.5));
        array.ifPresent(a -> {
            add(
                    "charge controller to battery",
                    "controllerToBattery",
                    a.controllerCurrentA(),
                    lengths.controllerToBattery(),
                    2);
            strings(a.strings());
        });
        chargers.alternator().ifPresent(this::alternator);
        chargers.shore()
                .ifPresent(s ->
                        add("shore charger", "shoreCharger", shoreA(s.chargerPowerW()), lengths.shoreCharger(), 2));
        if (loadsA.value() > 0) {
            add("distribution", "distribution", loadsA, lengths.distribution(), 3);
        }
        return List.copyOf(sized);
    }

    private void main() {
        Derived current = mainA();
        if (current.value() > 0) {
            Feed feed = new Feed.Bank(
                    bank.data().chemistry(), bank.nominalCapacityAh(), Optional.empty(), Optional.empty());
            String name = "battery main";
            Derived length = length(name, "main", lengths.main(), 1);
            sized.add(CircuitSizing.of(
                    defaults.task(name, current, length, bank.busVoltageV()).fedBy(feed)));
        }
    }

    private Derived mainA() {
        List<Input> inputs = new ArrayList<>(List.of(loadsA.as("I_out")));
        inverter.ifPresent(i -> inputs.add(i.batteryCurrentA().as("I_out")));
        array.ifPresent(a -> inputs.add(a.controllerCurrentA().as("I_in")));
        chargers.alternator().ifPresent(a -> inputs.add(a.chargerCurrentA().as("I_in")));
        chargers.shore().ifPresent(s -> inputs.add(shoreA(s.chargerPowerW()).as("I_in")));
        return MAIN.value("battery main: current", Unit.AMPERE, inputs);
    }

    /** The current of an array already holds the 1.25 for brighter sun and the 1.25 for continuous current. */
    private void strings(ArrayStrings strings) {
        Derived cold = strings.coldOpenCircuitV();
        Derived voltage = STRING_V.value("string: voltage for its cable", Unit.VOLT, cold.as("V_cold"));
        String name = "array to charge controller";
        Feed feed = new Feed.ShortCircuit(StringWindow.maximumCurrentA(strings.module(), strings.parallelCount()));
        sized.add(CircuitSizing.of(defaults.shortTime(
                        name,
                        StringWindow.conductorCurrentA(strings.module(), strings.parallelCount()),
                        length(name, "arrayToController", lengths.arrayToController(), 6),
                        voltage)
                .fedBy(feed)));
    }

    private void alternator(AlternatorCharger charger) {
        String name = "alternator charger";
        Derived out = charger.chargerCurrentA();
        Derived in = charger.inputCurrentA();
        Derived current = ALTERNATOR.value(
                "alternator charger: current of its cable", Unit.AMPERE, out.as("I_out"), in.as("I_in"));
        Derived length = length(name, "alternatorCharger", lengths.alternatorCharger(), 6);
        sized.add(CircuitSizing.of(defaults.throughTheEngineSpace(name, current, length, bank.busVoltageV())));
    }

    private Derived shoreA(Derived powerW) {
        Derived charging = chargers.need().chargingVoltageV();
        return SHORE.value("shore charger: current at the bank", Unit.AMPERE, powerW.as("P"), charging.as("V_c"));
    }

    private void add(String name, String field, Derived currentA, OptionalDouble lengthM, double usualM) {
        Derived length = length(name, field, lengthM, usualM);
        sized.add(CircuitSizing.of(defaults.task(name, currentA, length, bank.busVoltageV())));
    }

    private Derived length(String name, String field, OptionalDouble lengthM, double usualM) {
        return CircuitDefaults.length(name, lengths.at(field), lengthM, usualM);
    }

    private static Derived loads(EnergyBudget budget, BatteryBank bank) {
        Derived power = budget.demand().dc().peakPowerW();
        return LOADS.value(
                "distribution: current, all DC loads running",
                Unit.AMPERE,
                power.as("P"),
                bank.lowestVoltageV().as("V_low"));
    }
}
