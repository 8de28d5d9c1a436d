package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.brief.CircuitLengths;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.demand.SupplyDemand;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.CircuitDetails;
import wayside.sizing.wiring.CircuitSizing;
import wayside.sizing.wiring.CircuitTask;
import wayside.sizing.wiring.Feed;
import wayside.sizing.wiring.Gauge;
import wayside.sizing.wiring.HighestVoltage;
import wayside.sizing.wiring.SizedCircuit;

/** The cables and fuses between the parts of a system: battery first, then outward. */
final class MainCircuits {
    /** What goes out, loads and inverter, or what comes in from sun, engine and hookup. */
    private static final Expression MAIN = Expression.definition("I = max(sum(I_out), sum(I_in))");

    private static final Expression MAIN_START = Expression.definition("I = sum(I_out)");

    /** 6 AWG, 16 mm2: what a lug for a battery post is made for. Common practice, no source. */
    private static final Gauge THINNEST_MAIN = Gauge.of("6");

    static final String MAIN_NAME = "battery main";
    static final String INVERTER_NAME = "inverter";
    static final String DISTRIBUTION_NAME = "distribution";
    static final String CONVERTER_NAME = "DC converter";

    private static final Expression SHORE = Expression.definition("I = P / V_c");
    private static final Expression LOADS = Expression.definition("I = P / V_low");

    private final Site site;
    private final BatteryBank bank;
    private final Derived bankFaultA;
    private final CircuitLengths lengths;
    private final CircuitDefaults defaults;
    private final Derived loadsA;
    private final Derived startA;
    private final Optional<InverterChoice> inverter;
    private final Optional<ConverterChoice> converter;
    private final SupplyDemand dc;
    private final Optional<ArrayChoice> array;
    private final Chargers chargers;
    private final List<SizedCircuit> sized = new ArrayList<>();

    private MainCircuits(
            Site site,
            BatteryBank bank,
            Derived bankFaultA,
            Optional<InverterChoice> inverter,
            Optional<ConverterChoice> converter,
            Optional<ArrayChoice> array,
            Chargers chargers) {
        this.site = site;
        this.bank = bank;
        this.bankFaultA = bankFaultA;
        this.lengths = site.brief().system().circuitLengthsM();
        this.defaults = CircuitDefaults.of(site.brief().system().rules());
        this.converter = converter;
        EnergyBudget budget = site.journey().highestDemand().budget();
        this.dc = budget.demand().dc();
        String name = converter.isPresent() ? CONVERTER_NAME : DISTRIBUTION_NAME;
        this.loadsA = current(name + ": current, all DC loads running", budget.dcFromTheBusW(dc.peakPowerW()), bank);
        this.startA =
                current(name + ": current, the hardest DC load starting", budget.dcFromTheBusW(dc.surgePowerW()), bank);
        this.inverter = inverter;
        this.array = array;
        this.chargers = chargers;
    }

    static List<SizedCircuit> of(
            Site site,
            BatteryBank bank,
            Derived bankFaultA,
            Optional<InverterChoice> inverter,
            Optional<ConverterChoice> converter,
            Optional<ArrayChoice> array,
            Chargers chargers) {
        return new MainCircuits(site, bank, bankFaultA, inverter, converter, array, chargers).all();
    }

    private List<SizedCircuit> all() {
        Optional<SizedCircuit> main = main();
        main.ifPresent(sized::add);
        Derived busbarA = Busbar.faultA(bankFaultA, bank.bankVoltageV(), main);
        inverter.ifPresent(i -> add(busbarA, INVERTER_NAME, "inverter", i.batteryCurrentA(), lengths.inverter(), 1.5));
        array.ifPresent(
                a -> sized.addAll(new ArrayCircuits(a, defaults, lengths).all(bus(ArrayCircuits.output()), busbarA)));
        chargers.alternator()
                .ifPresent(a -> sized.addAll(new AlternatorCircuits(a, defaults, lengths)
                        .all(ArrayStrings.chargingV(site), bus(AlternatorCircuits.houseSide()), busbarA)));
        chargers.shore()
                .ifPresent(s -> add(
                        busbarA,
                        "shore charger",
                        "shoreCharger",
                        shoreA(s.chargerPowerW()),
                        lengths.shoreCharger(),
                        2));
        if (loadsA.value() > 0) {
            distribution(busbarA);
        }
        return List.copyOf(sized);
    }

    /** Straight off the bus, or through a converter where the loads are made for another voltage. */
    private void distribution(Derived busbarA) {
        if (converter.isEmpty()) {
            sized.add(
                    CircuitSizing.of(task(busbarA, DISTRIBUTION_NAME, "distribution", loadsA, lengths.distribution(), 3)
                            .with(CircuitDetails.NONE.starting(startA))));
            return;
        }
        CircuitTask input = defaults.losing(CONVERTER_NAME, LoadWay.OF_THE_REST)
                .task(CONVERTER_NAME, loadsA, ConverterCircuits.inputLengthM(), bus(CONVERTER_NAME))
                .fedBy(new Feed.Node(busbarA))
                .with(CircuitDetails.NONE.starting(startA));
        Derived length =
                CircuitDefaults.length(DISTRIBUTION_NAME, lengths.at("distribution"), lengths.distribution(), 3);
        sized.addAll(
                new ConverterCircuits(converter.get(), defaults).all(input, length, dc.peakPowerW(), dc.surgePowerW()));
    }

    private Optional<SizedCircuit> main() {
        Derived current = mainA();
        if (current.value() == 0) {
            return Optional.empty();
        }
        String name = MAIN_NAME;
        Derived length = CircuitDefaults.length(name, lengths.at("main"), lengths.main(), 1);
        return Optional.of(CircuitSizing.of(defaults.losing(name, LoadWay.OF_THE_MAIN)
                .task(name, current, length, bus(name))
                .fedBy(new Feed.Bank(bank.nominalCapacityAh(), bankFaultA))
                .with(CircuitDetails.NONE.atLeast(THINNEST_MAIN).starting(mainStartA()))));
    }

    private Derived mainA() {
        List<Input> inputs = new ArrayList<>(List.of(loadsA.as("I_out")));
        inverter.ifPresent(i -> inputs.add(i.batteryCurrentA().as("I_out")));
        array.ifPresent(a -> inputs.add(a.controllers().togetherA().as("I_in")));
        chargers.alternator().ifPresent(a -> inputs.add(a.chargerCurrentA().as("I_in")));
        chargers.shore().ifPresent(s -> inputs.add(shoreA(s.chargerPowerW()).as("I_in")));
        return MAIN.value("battery main: current", Unit.AMPERE, inputs);
    }

    private Derived mainStartA() {
        List<Input> inputs = new ArrayList<>(List.of(startA.as("I_out")));
        inverter.ifPresent(i -> inputs.add(i.batteryCurrentA().as("I_out")));
        return MAIN_START.value("battery main: current, the hardest DC load starting", Unit.AMPERE, inputs);
    }

    private Derived shoreA(Derived powerW) {
        Derived charging = chargers.need().chargingVoltageV();
        return SHORE.value("shore charger: current at the bank", Unit.AMPERE, powerW.as("P"), charging.as("V_c"));
    }

    private void add(
            Derived busbarA, String name, String field, Derived currentA, OptionalDouble lengthM, double usualM) {
        sized.add(CircuitSizing.of(task(busbarA, name, field, currentA, lengthM, usualM)));
    }

    private CircuitTask task(
            Derived busbarA, String name, String field, Derived currentA, OptionalDouble lengthM, double usualM) {
        Derived length = CircuitDefaults.length(name, lengths.at(field), lengthM, usualM);
        double part = name.equals(DISTRIBUTION_NAME) ? LoadWay.OF_THE_DISTRIBUTION : LoadWay.OF_THE_REST;
        return defaults.losing(name, part)
                .task(name, currentA, length, bus(name))
                .fedBy(new Feed.Node(busbarA));
    }

    /** The bus as a circuit meets it. */
    private CircuitVoltage bus(String name) {
        return new CircuitVoltage(
                bank.busVoltageV(), HighestVoltage.ofBank(name, bank.data().chemistry(), bank.busVoltageV()));
    }

    private static Derived current(String label, Derived powerW, BatteryBank bank) {
        return LOADS.value(
                label, Unit.AMPERE, powerW.as("P"), bank.lowestVoltageV().as("V_low"));
    }
}
