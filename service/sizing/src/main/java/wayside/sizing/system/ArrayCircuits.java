package wayside.sizing.system;

import wayside.sizing.brief.CircuitLengths;
import wayside.sizing.solar.array.StringWindow;
import wayside.sizing.system.graph.CablePlace;
import wayside.sizing.system.graph.Device;
import wayside.sizing.system.graph.DeviceKind;
import wayside.sizing.system.graph.NodeKind;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.CircuitDetails;
import wayside.sizing.wiring.CircuitSizing;
import wayside.sizing.wiring.CircuitTask;
import wayside.sizing.wiring.FaultCurrent;
import wayside.sizing.wiring.Feed;

/** The circuits of an array: each string where it needs a fuse, roof to controller, controller to bus. */
final class ArrayCircuits {
    private static final String OUTPUT = "charge controller to battery";
    private static final String INPUT = "array to charge controller";
    private static final String STRING = "string of modules";

    private final ArrayChoice array;
    private final CircuitDefaults defaults;
    private final CircuitLengths lengths;

    ArrayCircuits(ArrayChoice array, CircuitDefaults defaults, CircuitLengths lengths) {
        this.array = array;
        this.defaults = defaults;
        this.lengths = lengths;
    }

    static String output() {
        return OUTPUT;
    }

    /**
     * @param bus voltage of the controller's output, named for its circuit
     * @param busbar a short at it
     */
    void layIn(GraphBuilder graph, CircuitVoltage bus, FaultCurrent busbar) {
        graph.add(
                NodeKind.BUSBAR,
                NodeKind.CHARGE_CONTROLLER,
                CablePlace.LIVING_SPACE,
                CircuitSizing.of(forEachController(controllerOutput(bus, busbar))),
                busbar);
        graph.add(
                NodeKind.ARRAY,
                NodeKind.CHARGE_CONTROLLER,
                CablePlace.ROOF,
                CircuitSizing.of(forEachController(controllerInput())),
                new Device(DeviceKind.ISOLATOR, NodeKind.CHARGE_CONTROLLER));
        graph.count(NodeKind.CHARGE_CONTROLLER, array.controllers().count());
        if (array.stringFuses().areNeeded()) {
            graph.add(NodeKind.STRING, NodeKind.ARRAY, CablePlace.ROOF, CircuitSizing.of(string()));
            graph.count(NodeKind.STRING, array.strings().parallelCount());
        }
    }

    private CircuitTask forEachController(CircuitTask task) {
        Derived count = array.controllers().count();
        return count.value() > 1 ? task.with(CircuitDetails.NONE.times(count)) : task;
    }

    private CircuitTask controllerOutput(CircuitVoltage bus, FaultCurrent busbar) {
        Derived length =
                CircuitDefaults.length(OUTPUT, lengths.at("controllerToBattery"), lengths.controllerToBattery(), 2);
        return defaults.losing(OUTPUT, LoadWay.OF_THE_REST)
                .task(OUTPUT, array.controllers().ratedA(), length, bus)
                .fedBy(busbar.feed());
    }

    /** The current of an array already holds the 1.25 for brighter sun and the 1.25 for continuous current. */
    private CircuitTask controllerInput() {
        Derived strings = array.controllers().stringCount();
        Derived length = CircuitDefaults.length(INPUT, lengths.at("arrayToController"), lengths.arrayToController(), 6);
        return defaults.shortTime(
                        INPUT, StringWindow.conductorCurrentA(array.strings().module(), strings), length, voltage())
                .fedBy(new Feed.ShortCircuit(
                        StringWindow.maximumCurrentA(array.strings().module(), strings)));
    }

    private CircuitTask string() {
        Derived one = Derived.convention(
                "string: strings in it", 1, Unit.COUNT, "Each string by itself", Source.definition());
        Derived length = Derived.convention(
                STRING + ": length, one way",
                3,
                Unit.METRE,
                "Usual on a roof, from the string to where the strings meet",
                Source.commonPractice());
        return defaults.shortTime(
                        STRING,
                        StringWindow.conductorCurrentA("string", array.strings().module(), one),
                        length,
                        voltage())
                .fedBy(new Feed.ParallelStrings(array.stringFuses().othersA()))
                .with(CircuitDetails.NONE.times(array.strings().parallelCount()));
    }

    private CircuitVoltage voltage() {
        return new CircuitVoltage(array.strings().hotWorkingV(), array.strings().coldOpenCircuitV());
    }
}
