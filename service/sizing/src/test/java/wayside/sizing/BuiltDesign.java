package wayside.sizing;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.system.ArrayChoice;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Caution;
import wayside.sizing.wiring.SizedCircuit;
import wayside.sizing.wiring.SizedConductor;

/**
 * What would be bought and built from a recommendation, in plain figures, so that a check needs no code of the core.
 *
 * @param capacityAh of the bank
 * @param coldestC air on the coldest morning
 * @param vehicleV nominal, of the vehicle's net
 * @param alternatorLabelA of its alternator
 * @param chargerA output of the charger between alternator and bank; 0 without one
 * @param array 0 modules without one
 */
record BuiltDesign(
        Chemistry chemistry,
        double busV,
        double capacityAh,
        double coldestC,
        double vehicleV,
        double alternatorLabelA,
        double chargerA,
        Panels array,
        List<Cable> cables) {

    /** An array of p strings of n modules on so many controllers. */
    record Panels(double powerW, double moduleW, int series, int parallel, int controllers, double controllerA) {}

    /**
     * A cable with its fuse.
     *
     * @param mm2 copper each way, of the thicker size offered
     * @param toBeConfirmed whether the answer says that no fuse breaks the estimate
     */
    record Cable(
            String name,
            int count,
            double currentA,
            double lengthM,
            double mm2,
            double fuseA,
            double fuseV,
            double breaksA,
            boolean toBeConfirmed) {}

    static BuiltDesign of(SizedSystem system, double coldestC, double vehicleV, double alternatorLabelA) {
        List<Cable> cables = new ArrayList<>();
        for (SizedCircuit circuit : system.circuits()) {
            cables.add(cable((SizedCircuit.Wired) circuit));
        }
        return new BuiltDesign(
                system.battery().bank().data().chemistry(),
                system.battery().bank().busVoltageV().value(),
                system.battery().bank().nominalCapacityAh().value(),
                coldestC,
                vehicleV,
                alternatorLabelA,
                system.chargers()
                        .alternator()
                        .map(charger -> charger.chargerCurrentA().value())
                        .orElse(0.0),
                system.array().map(BuiltDesign::panels).orElse(new Panels(0, 0, 0, 0, 0, 0)),
                cables);
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
                wired.fuse().ratingA().value(),
                wired.fuse().link().ratedVoltageV().value(),
                wired.fuse().link().breakingA().value(),
                wired.cautions().stream().map(Caution::code).anyMatch("confirm-fault-current"::equals));
    }

    private static double mm2(SizedConductor conductor) {
        return conductor.areaMm2().value() * conductor.parallelCount().value();
    }
}
