package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.brief.CircuitLengths;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.demand.SupplyDemand;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.system.graph.CablePlace;
import wayside.sizing.system.graph.Device;
import wayside.sizing.system.graph.DeviceKind;
import wayside.sizing.system.graph.NodeKind;
import wayside.sizing.system.graph.SystemGraph;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.CircuitDetails;
import wayside.sizing.wiring.CircuitSizing;
import wayside.sizing.wiring.CircuitTask;
import wayside.sizing.wiring.FaultCurrent;
import wayside.sizing.wiring.Feed;
import wayside.sizing.wiring.Gauge;
import wayside.sizing.wiring.HighestVoltage;
import wayside.sizing.wiring.SizedCircuit;

/** Lays the cables between the parts of a system, each with its fuse: battery first, then outward. */
final class MainCircuits {
    /** What goes out, loads and inverter, or what comes in from sun, engine and hookup. */
    private static final Expression MAIN = Expression.definition("I = max(sum(I_out), sum(I_in))");

    private static final Expression MAIN_START = Expression.definition("I = sum(I_out)");

    /** 6 AWG, 16 mm2: what a lug for a battery post is made for. Common practice, no source. */
    private static final Gauge THINNEST_MAIN = Gauge.of("6");

    static final String MAIN_NAME = "battery main";
    static final String INVERTER_NAME = "inverter";
    static final String DISTRIBUTION_NAME = "distribution";
    private static final String HEATER_NAME = "battery heater";
    static final String CONVERTER_NAME = "DC converter";

    private static final Expression SHORE = Expression.definition("I = P / V_c");
    private static final Expression LOADS = Expression.definition("I = P / V_low");

    private final Site site;
    private final BankChoice battery;
    private final BatteryBank bank;
    private final FaultCurrent fault;
    private final CircuitLengths lengths;
    private final CircuitDefaults defaults;
    private final Derived loadsA;
    private final Derived startA;
    private final Optional<InverterChoice> inverter;
    private final Optional<ConverterChoice> converter;
    private final SupplyDemand dc;
    private final Optional<ArrayChoice> array;
    private final Chargers chargers;
    private final Optional<AcSide> ac;
    private final Optional<Derived> heaterA;
    private final GraphBuilder graph = new GraphBuilder();

    private MainCircuits(
            Site site,
            BankChoice battery,
            FaultCurrent fault,
            Optional<InverterChoice> inverter,
            Optional<ConverterChoice> converter,
            Optional<ArrayChoice> array,
            Chargers chargers,
            Optional<AcSide> ac) {
        this.site = site;
        this.battery = battery;
        this.bank = battery.bank();
        this.fault = fault;
        this.lengths = site.brief().system().circuitLengthsM();
        this.defaults = CircuitDefaults.of(site.brief().system().rules());
        this.converter = converter;
        EnergyBudget budget = site.journey().highestDemand().budget();
        this.dc = budget.demand().dc();
        String name = converter.isPresent() ? CONVERTER_NAME : DISTRIBUTION_NAME;
        this.loadsA = current(
                name + ": current, all DC loads running", budget.dcFromTheBusW(dc.peakPowerW()), battery.bank());
        this.startA = current(
                name + ": current, the hardest DC load starting",
                budget.dcFromTheBusW(dc.surgePowerW()),
                battery.bank());
        this.inverter = inverter;
        this.array = array;
        this.chargers = chargers;
        this.ac = ac;
        this.heaterA = site.journey()
                .place()
                .heating()
                .map(heating -> current(HEATER_NAME + ": current", heating.powerW(), battery.bank()));
    }

    static SystemGraph of(
            Site site,
            BankChoice battery,
            FaultCurrent fault,
            Optional<InverterChoice> inverter,
            Optional<ConverterChoice> converter,
            Optional<ArrayChoice> array,
            Chargers chargers,
            Optional<AcSide> ac) {
        return new MainCircuits(site, battery, fault, inverter, converter, array, chargers, ac).graph();
    }

    private SystemGraph graph() {
        FaultCurrent busbar = mains();
        inverter.ifPresent(i -> branch(
                busbar, NodeKind.INVERTER, INVERTER_NAME, "inverter", i.batteryCurrentA(), lengths.inverter(), 1.5));
        array.ifPresent(a -> new ArrayCircuits(a, defaults, lengths).layIn(graph, bus(ArrayCircuits.output()), busbar));
        chargers.alternator().ifPresent(a -> new AlternatorCircuits(a, defaults, lengths)
                .layIn(graph, ArrayStrings.chargingV(site), bus(AlternatorCircuits.houseSide()), busbar));
        chargers.shore()
                .ifPresent(s -> branch(
                        busbar,
                        NodeKind.SHORE_CHARGER,
                        "shore charger",
                        "shoreCharger",
                        shoreA(s.chargerPowerW()),
                        lengths.shoreCharger(),
                        2));
        if (loadsA.value() > 0) {
            distribution(busbar);
        }
        heaterA.ifPresent(amperes -> heater(busbar, amperes));
        ac.ifPresent(side -> graph.addAc(side.cables()));
        return graph.graph();
    }

    /** It lies against the battery, so that the way from the busbar is the way back. */
    private void heater(FaultCurrent busbar, Derived amperes) {
        Derived length = Derived.convention(
                HEATER_NAME + ": length, one way",
                1.5,
                Unit.METRE,
                "From the busbar back to the battery, whose own cable is about as long",
                Source.commonPractice());
        CircuitTask task = defaults.losing(HEATER_NAME, LoadWay.OF_THE_REST)
                .task(HEATER_NAME, amperes, length, bus(HEATER_NAME))
                .fedBy(busbar.feed());
        graph.add(NodeKind.BUSBAR, NodeKind.BANK_HEATER, CablePlace.LIVING_SPACE, CircuitSizing.of(task), busbar);
    }

    /** Straight off the bus, or through a converter where the loads are made for another voltage. */
    private void distribution(FaultCurrent busbar) {
        if (converter.isEmpty()) {
            CircuitTask task = task(busbar, DISTRIBUTION_NAME, "distribution", loadsA, lengths.distribution(), 3)
                    .with(CircuitDetails.NONE.starting(startA));
            graph.add(NodeKind.BUSBAR, NodeKind.DC_LOADS, CablePlace.LIVING_SPACE, CircuitSizing.of(task), busbar);
            return;
        }
        CircuitTask input = defaults.losing(CONVERTER_NAME, LoadWay.OF_THE_REST)
                .task(CONVERTER_NAME, loadsA, ConverterCircuits.inputLengthM(), bus(CONVERTER_NAME))
                .fedBy(busbar.feed())
                .with(CircuitDetails.NONE.starting(startA));
        Derived length =
                CircuitDefaults.length(DISTRIBUTION_NAME, lengths.at("distribution"), lengths.distribution(), 3);
        new ConverterCircuits(converter.get(), defaults)
                .layIn(graph, input, busbar, length, dc.peakPowerW(), dc.surgePowerW());
    }

    /**
     * The battery main, and before it a cable for each battery where each has a fuse of its own.
     *
     * @return a short at the busbar
     */
    private FaultCurrent mains() {
        Derived current = mainA();
        if (current.value() == 0) {
            return fault;
        }
        BatteryLinks links = new BatteryLinks(battery, fault, defaults);
        if (links.areNeeded()) {
            links.layIn(graph, current, mainStartA(), bus(BatteryLinks.NAME));
        }
        Derived length = CircuitDefaults.length(MAIN_NAME, lengths.at("main"), lengths.main(), 1);
        Feed feed = links.areNeeded()
                ? fault.feed()
                : new Feed.Bank(bank.nominalCapacityAh(), fault.amperes(), fault.estimated());
        SizedCircuit main = CircuitSizing.of(
                defaults.losing(MAIN_NAME, links.areNeeded() ? LoadWay.OF_THE_MAIN / 2 : LoadWay.OF_THE_MAIN)
                        .task(MAIN_NAME, current, length, bus(MAIN_NAME))
                        .fedBy(feed)
                        .with(CircuitDetails.NONE.atLeast(THINNEST_MAIN).starting(mainStartA())));
        return graph.add(
                NodeKind.BANK,
                NodeKind.BUSBAR,
                CablePlace.LIVING_SPACE,
                main,
                fault,
                new Device(DeviceKind.ISOLATOR, NodeKind.BANK),
                new Device(DeviceKind.SHUNT, NodeKind.BANK));
    }

    private Derived mainA() {
        List<Input> inputs = new ArrayList<>(List.of(loadsA.as("I_out")));
        inverter.ifPresent(i -> inputs.add(i.batteryCurrentA().as("I_out")));
        heaterA.ifPresent(amperes -> inputs.add(amperes.as("I_out")));
        array.ifPresent(a -> inputs.add(a.controllers().togetherA().as("I_in")));
        chargers.alternator().ifPresent(a -> inputs.add(a.chargerCurrentA().as("I_in")));
        chargers.shore().ifPresent(s -> inputs.add(shoreA(s.chargerPowerW()).as("I_in")));
        return MAIN.value("battery main: current", Unit.AMPERE, inputs);
    }

    private Derived mainStartA() {
        List<Input> inputs = new ArrayList<>(List.of(startA.as("I_out")));
        inverter.ifPresent(i -> inputs.add(i.batteryCurrentA().as("I_out")));
        heaterA.ifPresent(amperes -> inputs.add(amperes.as("I_out")));
        return MAIN_START.value("battery main: current, the hardest DC load starting", Unit.AMPERE, inputs);
    }

    private Derived shoreA(Derived powerW) {
        Derived charging = chargers.need().chargingVoltageV();
        return SHORE.value("shore charger: current at the bank", Unit.AMPERE, powerW.as("P"), charging.as("V_c"));
    }

    private void branch(
            FaultCurrent busbar,
            NodeKind to,
            String name,
            String field,
            Derived currentA,
            OptionalDouble lengthM,
            double usualM) {
        SizedCircuit circuit = CircuitSizing.of(task(busbar, name, field, currentA, lengthM, usualM));
        graph.add(NodeKind.BUSBAR, to, CablePlace.LIVING_SPACE, circuit, busbar);
    }

    private CircuitTask task(
            FaultCurrent busbar, String name, String field, Derived currentA, OptionalDouble lengthM, double usualM) {
        Derived length = CircuitDefaults.length(name, lengths.at(field), lengthM, usualM);
        double part = name.equals(DISTRIBUTION_NAME) ? LoadWay.OF_THE_DISTRIBUTION : LoadWay.OF_THE_REST;
        return defaults.losing(name, part)
                .task(name, currentA, length, bus(name))
                .fedBy(busbar.feed());
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
