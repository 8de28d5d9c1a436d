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
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.CircuitSizing;
import wayside.sizing.wiring.Feed;
import wayside.sizing.wiring.SizedCircuit;

/** The cables and fuses between the parts of a system: battery first, then outward. */
final class MainCircuits {
    private static final double ARRAY_CHARGING_SHARE = 1.2;

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
        this.loadsA = loads(site.thirstiest().budget(), bank);
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
        List<Input> inputs = new ArrayList<>(List.of(loadsA.as("I_dc")));
        double out = loadsA.value();
        double in = 0;
        if (inverter.isPresent()) {
            inputs.add(inverter.get().batteryCurrentA().as("I_inverter"));
            out += inverter.get().batteryCurrentA().value();
        }
        if (array.isPresent()) {
            inputs.add(array.get().controllerCurrentA().as("I_solar"));
            in += array.get().controllerCurrentA().value();
        }
        if (chargers.alternator().isPresent()) {
            inputs.add(chargers.alternator().get().chargerCurrentA().as("I_alternator"));
            in += chargers.alternator().get().chargerCurrentA().value();
        }
        if (chargers.shore().isPresent()) {
            Derived shore = shoreA(chargers.shore().get().chargerPowerW());
            inputs.add(shore.as("I_shore"));
            in += shore.value();
        }
        return Derived.computed(
                "battery main: current",
                Math.max(out, in),
                Unit.AMPERE,
                Formula.definition(
                        "I = larger of what goes out (loads, inverter) and what comes in (sun, engine, hookup)"),
                inputs.toArray(Input[]::new));
    }

    /** The current of an array already holds the 1.25 for brighter sun and the 1.25 for continuous current. */
    private void strings(ArrayStrings strings) {
        Derived cold = strings.coldOpenCircuitV();
        Derived voltage = Derived.computed(
                "string: voltage for its cable",
                cold.value() / ARRAY_CHARGING_SHARE,
                Unit.VOLT,
                Formula.commonPractice("V = V_cold / 1.2: the highest voltage reckoned is then the open-circuit one"),
                cold.as("V_cold"));
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
        Derived current = Derived.computed(
                "alternator charger: current of its cable",
                Math.max(out.value(), in.value()),
                Unit.AMPERE,
                Formula.definition("I = larger of I_out and I_in"),
                out.as("I_out"),
                in.as("I_in"));
        Derived length = length(name, "alternatorCharger", lengths.alternatorCharger(), 6);
        sized.add(CircuitSizing.of(defaults.throughTheEngineSpace(name, current, length, bank.busVoltageV())));
    }

    private Derived shoreA(Derived powerW) {
        Derived charging = chargers.need().chargingVoltageV();
        return Derived.computed(
                "shore charger: current at the bank",
                powerW.value() / charging.value(),
                Unit.AMPERE,
                Formula.definition("I = P / V_c"),
                powerW.as("P"),
                charging.as("V_c"));
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
        return Derived.computed(
                "distribution: current, all DC loads running",
                power.value() / bank.lowestVoltageV().value(),
                Unit.AMPERE,
                Formula.definition("I = P / V_low"),
                power.as("P"),
                bank.lowestVoltageV().as("V_low"));
    }
}
