package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.CircuitLengths;
import wayside.sizing.solar.StringWindow;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.CircuitDetails;
import wayside.sizing.wiring.CircuitSizing;
import wayside.sizing.wiring.CircuitTask;
import wayside.sizing.wiring.Feed;
import wayside.sizing.wiring.SizedCircuit;

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
     * @param busbarFaultA of a short at the busbar [A]
     */
    List<SizedCircuit> all(CircuitVoltage bus, Derived busbarFaultA) {
        List<SizedCircuit> circuits = new ArrayList<>();
        circuits.add(CircuitSizing.of(forEachController(controllerOutput(bus, busbarFaultA))));
        circuits.add(CircuitSizing.of(forEachController(controllerInput())));
        if (array.stringFuses().areNeeded()) {
            circuits.add(CircuitSizing.of(string()));
        }
        return circuits;
    }

    private CircuitTask forEachController(CircuitTask task) {
        Derived count = array.controllers().count();
        return count.value() > 1 ? task.with(CircuitDetails.NONE.times(count)) : task;
    }

    private CircuitTask controllerOutput(CircuitVoltage bus, Derived busbarFaultA) {
        Derived length =
                CircuitDefaults.length(OUTPUT, lengths.at("controllerToBattery"), lengths.controllerToBattery(), 2);
        return defaults.losing(OUTPUT, LoadWay.OF_THE_REST)
                .task(OUTPUT, array.controllers().ratedA(), length, bus)
                .fedBy(new Feed.Node(busbarFaultA));
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
