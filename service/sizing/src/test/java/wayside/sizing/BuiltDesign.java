package wayside.sizing;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.system.AcSide;
import wayside.sizing.system.ArrayChoice;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derived;
import wayside.sizing.wiring.SizedCircuit;
import wayside.sizing.wiring.SizedConductor;

/**
 * What would be bought and built from a recommendation, in plain figures, so that a check needs no code of the core.
 *
 * @param capacityAh of the bank
 * @param batteries side by side; 0 where nobody knows
 * @param statedShortA of the bank by its maker; 0 where it is an estimate
 * @param coldestC air on the coldest morning
 * @param vehicleV nominal, of the vehicle's net
 * @param alternatorLabelA of its alternator
 * @param chargerA output of the charger between alternator and bank; 0 without one
 * @param array 0 modules without one
 * @param mains volts of it; 0 without any
 */
record BuiltDesign(
        Chemistry chemistry,
        double busV,
        double capacityAh,
        int batteries,
        double statedShortA,
        double coldestC,
        double vehicleV,
        double alternatorLabelA,
        double chargerA,
        Panels array,
        List<Cable> cables,
        Mains mains) {

    /** An array of p strings of n modules on so many controllers. */
    record Panels(double powerW, double moduleW, int series, int parallel, int controllers, double controllerA) {}

    /**
     * A cable with its fuse.
     *
     * @param mm2 copper each way, of the thicker size offered
     * @param thinMm2 one conductor of the thinner size offered
     * @param insulationC its class
     * @param blade whether its fuse is a blade
     * @param toBeConfirmed whether the answer says that no fuse breaks the estimate
     */
    record Cable(
            String name,
            int count,
            double currentA,
            double lengthM,
            double mm2,
            double thinMm2,
            double insulationC,
            boolean blade,
            double fuseA,
            double fuseV,
            double breaksA,
            boolean toBeConfirmed) {}

    /**
     * The mains side.
     *
     * @param volts 0 without any
     * @param opensA residual current
     * @param inletA 0 without one
     * @param bondedOnShore whether neutral is bonded in the vehicle while plugged in
     */
    record Mains(
            double volts, double opensA, double inletA, double leadMm2, boolean bondedOnShore, List<AcLine> lines) {}

    /** A mains circuit with its breaker. */
    record AcLine(String name, double currentA, double breakerA, double mm2) {}

    static BuiltDesign of(
            SizedSystem system, double statedShortA, double coldestC, double vehicleV, double alternatorLabelA) {
        List<Cable> cables = new ArrayList<>();
        for (SizedCircuit circuit : system.circuits()) {
            cables.add(cable((SizedCircuit.Wired) circuit));
        }
        return new BuiltDesign(
                system.battery().bank().data().chemistry(),
                system.battery().bank().busVoltageV().value(),
                system.battery().bank().nominalCapacityAh().value(),
                system.battery()
                        .buyable()
                        .map(bank -> (int) bank.parallelCount().value())
                        .orElse(0),
                statedShortA,
                coldestC,
                vehicleV,
                alternatorLabelA,
                system.chargers()
                        .alternator()
                        .map(charger -> charger.chargerCurrentA().value())
                        .orElse(0.0),
                system.array().map(BuiltDesign::panels).orElse(new Panels(0, 0, 0, 0, 0, 0)),
                cables,
                system.ac().map(BuiltDesign::mains).orElse(new Mains(0, 0, 0, 0, false, List.of())));
    }

    private static Mains mains(AcSide ac) {
        return new Mains(
                ac.voltageV().value(),
                ac.residualA().value(),
                ac.inlet().map(inlet -> inlet.ratingA().value()).orElse(0.0),
                ac.inlet().map(inlet -> inlet.leadMm2().value()).orElse(0.0),
                false,
                ac.cables().stream()
                        .map(cable -> new AcLine(
                                cable.circuit().name(),
                                cable.circuit().currentA().value(),
                                cable.circuit().breakerA().map(Derived::value).orElse(0.0),
                                cable.circuit().areaMm2().map(Derived::value).orElse(0.0)))
                        .toList());
    }

    private static Panels panels(ArrayChoice array) {
        return new Panels(
                array.powerW().value(),
                array.strings().modulePowerW().value(),
                (int) array.strings().seriesCount().value(),
                (int) array.strings().parallelCount().value(),
                (int) array.controllers().count().value(),
                array.controllers().ratedA().value());
    }

    private static Cable cable(SizedCircuit.Wired wired) {
        double metric = wired.metric().map(BuiltDesign::mm2).orElse(0.0);
        return new Cable(
                wired.duty().name(),
                wired.duty().details().count().map(count -> (int) count.value()).orElse(1),
                wired.duty().currentA().value(),
                wired.duty().lengthM().value(),
                Math.max(metric, mm2(wired.conductor())),
                wired.metric()
                        .map(size -> Math.min(
                                size.areaMm2().value(),
                                wired.conductor().areaMm2().value()))
                        .orElse(wired.conductor().areaMm2().value()),
                wired.duty().surroundings().insulationC().value(),
                wired.fuse().link().type().startsWith("blade"),
                wired.fuse().ratingA().value(),
                wired.fuse().link().ratedVoltageV().value(),
                wired.fuse().link().breakingA().value(),
                wired.cautions().stream().map(Caution::code).anyMatch("confirm-fault-current"::equals));
    }

    private static double mm2(SizedConductor conductor) {
        return conductor.areaMm2().value() * conductor.parallelCount().value();
    }
}
