package wayside.sizing.system;

import wayside.sizing.brief.CircuitLengths;
import wayside.sizing.charging.AlternatorCharger;
import wayside.sizing.system.graph.CablePlace;
import wayside.sizing.system.graph.NodeKind;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.BankFault;
import wayside.sizing.wiring.CircuitSizing;
import wayside.sizing.wiring.CircuitTask;
import wayside.sizing.wiring.FaultCurrent;

/**
 * The two circuits between alternator and bank, with the charger between them. Each is fed by a battery and fused there:
 * the vehicle side at the starter battery and the vehicle's voltage, the house side at the bus.
 *
 * <p>A charger keeps its output up when its input sinks, so the vehicle side carries most at the lowest voltage that a
 * smart alternator lets the net fall to, less the drop of its own cable:
 * {@code I = I_c V_b / (eta V_low (1 - u / 100))}. Sources: 12.0 to 15.5 V of a 12 V net as secondary pages give it, twice
 * that of a 24 V net from memory.
 */
final class AlternatorCircuits {
    private static final String VEHICLE_SIDE = "starter battery to alternator charger";
    private static final String HOUSE_SIDE = "alternator charger to battery";
    private static final Expression OF_THE_NET = Expression.definition("V_net = V_12 V / 12");
    private static final Expression INPUT = Expression.commonPractice("I = I_c V_b / (eta V_low (1 - u / 100))");

    private final AlternatorCharger charger;
    private final CircuitDefaults defaults;
    private final CircuitLengths lengths;

    AlternatorCircuits(AlternatorCharger charger, CircuitDefaults defaults, CircuitLengths lengths) {
        this.charger = charger;
        this.defaults = defaults;
        this.lengths = lengths;
    }

    /**
     * @param chargingV the highest that the bank is charged with [V]
     * @param bus voltage of the house side, named for its circuit
     * @param busbar a short at it
     */
    void layIn(GraphBuilder graph, Derived chargingV, CircuitVoltage bus, FaultCurrent busbar) {
        FaultCurrent starter = new FaultCurrent(
                AlternatorCharger.vehicleVoltageV(charger.vehicle()),
                BankFault.ofStarterBattery("starter battery: prospective short-circuit current"),
                true);
        graph.add(
                NodeKind.STARTER_BATTERY,
                NodeKind.ALTERNATOR_CHARGER,
                CablePlace.ENGINE_SPACE,
                CircuitSizing.of(vehicleSide(chargingV, starter)),
                starter);
        graph.add(
                NodeKind.BUSBAR,
                NodeKind.ALTERNATOR_CHARGER,
                CablePlace.LIVING_SPACE,
                CircuitSizing.of(houseSide(bus, busbar)),
                busbar);
        charger.buyable().ifPresent(rating -> graph.count(NodeKind.ALTERNATOR_CHARGER, rating.count()));
    }

    static String houseSide() {
        return HOUSE_SIDE;
    }

    private CircuitTask vehicleSide(Derived chargingV, FaultCurrent starter) {
        Derived nominal = AlternatorCharger.vehicleVoltageV(charger.vehicle());
        Derived highest = net("highest voltage", nominal, 15.5, "A smart alternator regulates a 12 V net up to it");
        Derived lowest = net("lowest voltage", nominal, 12.0, "A smart alternator lets a 12 V net fall to it");
        Derived current = INPUT.value(
                VEHICLE_SIDE + ": current",
                Unit.AMPERE,
                charger.chargerCurrentA().as("I_c"),
                chargingV.as("V_b"),
                efficiencyAtFullCurrent().as("eta"),
                lowest.as("V_low"),
                defaults.dropLimitPercent().as("u"));
        Derived length =
                CircuitDefaults.length(VEHICLE_SIDE, lengths.at("alternatorCharger"), lengths.alternatorCharger(), 6);
        return defaults.throughTheEngineSpace(VEHICLE_SIDE, current, length, new CircuitVoltage(nominal, highest))
                .fedBy(starter.feed());
    }

    private CircuitTask houseSide(CircuitVoltage bus, FaultCurrent busbar) {
        Derived length = CircuitDefaults.length(
                HOUSE_SIDE, lengths.at("alternatorChargerToBusbar"), lengths.alternatorChargerToBusbar(), 1);
        return defaults.losing(HOUSE_SIDE, LoadWay.OF_THE_REST)
                .task(HOUSE_SIDE, charger.chargerCurrentA(), length, bus)
                .fedBy(busbar.feed());
    }

    private static Derived net(String what, Derived vehicleV, double of12V, String reason) {
        String label = VEHICLE_SIDE + ": " + what;
        Derived of12 = Derived.convention(
                label + " of a 12 V vehicle", of12V, Unit.VOLT, reason + ", from memory", Source.commonPractice());
        return OF_THE_NET.value(label, Unit.VOLT, of12.as("V_12"), vehicleV.as("V"));
    }

    private static Derived efficiencyAtFullCurrent() {
        return Derived.convention(
                "alternator charger: efficiency at full current",
                0.87,
                Unit.SHARE,
                "Trade pages give 85 to 90 % and 90 to 95 %; a cable is sized for the lower",
                Source.commonPractice());
    }
}
