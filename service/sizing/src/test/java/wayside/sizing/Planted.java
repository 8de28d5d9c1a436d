package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Designs with a fault planted in them. */
final class Planted {
    private Planted() {}

    static BuiltDesign.Cable thinner(BuiltDesign.Cable cable, double times) {
        return new BuiltDesign.Cable(
                cable.name(),
                cable.count(),
                cable.currentA(),
                cable.lengthM(),
                cable.mm2() / times,
                cable.thinMm2() / times,
                cable.insulationC(),
                cable.blade(),
                cable.fuseA(),
                cable.fuseV(),
                cable.breaksA(),
                cable.toBeConfirmed());
    }

    static BuiltDesign.Cable fuse(BuiltDesign.Cable cable, double ratingA, double volts, double breaksA) {
        return new BuiltDesign.Cable(
                cable.name(),
                cable.count(),
                cable.currentA(),
                cable.lengthM(),
                cable.mm2(),
                cable.thinMm2(),
                cable.insulationC(),
                cable.blade(),
                ratingA,
                volts,
                breaksA,
                false);
    }

    static BuiltDesign with(BuiltDesign design, String name, UnaryOperator<BuiltDesign.Cable> change) {
        List<BuiltDesign.Cable> cables = new ArrayList<>(design.cables());
        cables.replaceAll(cable -> cable.name().equals(name) ? change.apply(cable) : cable);
        assertThat(cables).isNotEqualTo(design.cables());
        return copy(design, design.chargerA(), design.array(), cables);
    }

    static BuiltDesign without(BuiltDesign design, String name) {
        List<BuiltDesign.Cable> cables = new ArrayList<>(design.cables());
        assertThat(cables.removeIf(cable -> cable.name().equals(name))).isTrue();
        return copy(design, design.chargerA(), design.array(), cables);
    }

    static BuiltDesign strung(BuiltDesign design, int series) {
        BuiltDesign.Panels old = design.array();
        return copy(
                design,
                design.chargerA(),
                new BuiltDesign.Panels(
                        old.powerW(), old.moduleW(), series, old.parallel(), old.controllers(), old.controllerA()),
                design.cables());
    }

    static BuiltDesign charging(BuiltDesign design, double chargerA) {
        return copy(design, chargerA, design.array(), design.cables());
    }

    static BuiltDesign copy(
            BuiltDesign design, double chargerA, BuiltDesign.Panels array, List<BuiltDesign.Cable> cables) {
        return new BuiltDesign(
                design.chemistry(),
                design.busV(),
                design.capacityAh(),
                design.batteries(),
                design.statedShortA(),
                design.coldestC(),
                design.vehicleV(),
                design.alternatorLabelA(),
                chargerA,
                array,
                cables,
                design.mains());
    }

    /** Another mains side. */
    static BuiltDesign mains(BuiltDesign design, UnaryOperator<BuiltDesign.Mains> change) {
        return new BuiltDesign(
                design.chemistry(),
                design.busV(),
                design.capacityAh(),
                design.batteries(),
                design.statedShortA(),
                design.coldestC(),
                design.vehicleV(),
                design.alternatorLabelA(),
                design.chargerA(),
                design.array(),
                design.cables(),
                change.apply(design.mains()));
    }

    /** A bank of so much more. */
    static BuiltDesign bank(BuiltDesign design, double capacityAh, double statedShortA) {
        return new BuiltDesign(
                design.chemistry(),
                design.busV(),
                capacityAh,
                design.batteries(),
                statedShortA,
                design.coldestC(),
                design.vehicleV(),
                design.alternatorLabelA(),
                design.chargerA(),
                design.array(),
                design.cables(),
                design.mains());
    }

    /** The same on colder mornings. */
    static BuiltDesign colder(BuiltDesign design, double coldestC) {
        return new BuiltDesign(
                design.chemistry(),
                design.busV(),
                design.capacityAh(),
                design.batteries(),
                design.statedShortA(),
                coldestC,
                design.vehicleV(),
                design.alternatorLabelA(),
                design.chargerA(),
                design.array(),
                design.cables(),
                design.mains());
    }

    /** So many of a cable. */
    static BuiltDesign.Cable times(BuiltDesign.Cable cable, int count) {
        return new BuiltDesign.Cable(
                cable.name(),
                count,
                cable.currentA(),
                cable.lengthM(),
                cable.mm2(),
                cable.thinMm2(),
                cable.insulationC(),
                cable.blade(),
                cable.fuseA(),
                cable.fuseV(),
                cable.breaksA(),
                cable.toBeConfirmed());
    }

    /** Another current in a cable. */
    static BuiltDesign.Cable carrying(BuiltDesign.Cable cable, double currentA) {
        return new BuiltDesign.Cable(
                cable.name(),
                cable.count(),
                currentA,
                cable.lengthM(),
                cable.mm2(),
                cable.thinMm2(),
                cable.insulationC(),
                cable.blade(),
                cable.fuseA(),
                cable.fuseV(),
                cable.breaksA(),
                cable.toBeConfirmed());
    }

    /** A blade of a rating before a conductor of a class. */
    static BuiltDesign.Cable bladed(BuiltDesign.Cable cable, double fuseA, double thinMm2, double insulationC) {
        return new BuiltDesign.Cable(
                cable.name(),
                cable.count(),
                Math.min(cable.currentA(), fuseA),
                cable.lengthM(),
                cable.mm2(),
                thinMm2,
                insulationC,
                true,
                fuseA,
                cable.fuseV(),
                cable.breaksA(),
                true);
    }
}
