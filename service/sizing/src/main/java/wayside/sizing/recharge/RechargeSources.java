package wayside.sizing.recharge;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.ChargingKind;
import wayside.sizing.brief.RechargeBrief;
import wayside.sizing.charging.ChargerNeed;
import wayside.sizing.charging.ChargingSource;
import wayside.sizing.solar.ArrayModel;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** What the sources of a built system offer at the battery's terminals. */
final class RechargeSources {
    private static final double FULL_SUN_W_PER_M2 = 1000;
    private static final double REFERENCE_C = 25;

    private RechargeSources() {}

    static List<ChargingSource> of(RechargeBrief brief, ChargerNeed bank, Derived ambientC) {
        BuiltSystem system = brief.system();
        List<ChargingSource> sources = new ArrayList<>();
        if (runs(brief, ChargingKind.SOLAR) && system.arrayW() > 0) {
            sources.add(new ChargingSource(ChargingKind.SOLAR.code(), solarW(brief, ambientC)));
        }
        if (runs(brief, ChargingKind.ALTERNATOR) && system.alternatorA() > 0) {
            sources.add(new ChargingSource(ChargingKind.ALTERNATOR.code(), alternatorW(system, bank)));
        }
        if (runs(brief, ChargingKind.SHORE) && system.shoreW() > 0) {
            Derived power = Derived.given(
                    "shore charger: rated output", system.shoreW(), Unit.WATT, system.at("shoreChargerW"));
            sources.add(new ChargingSource(ChargingKind.SHORE.code(), power));
        }
        return sources;
    }

    private static boolean runs(RechargeBrief brief, ChargingKind kind) {
        return brief.sources().isEmpty() || brief.sources().contains(kind);
    }

    private static Derived alternatorW(BuiltSystem system, ChargerNeed bank) {
        Derived current = Derived.given(
                "alternator charger: rated output",
                system.alternatorA(),
                Unit.AMPERE,
                system.at("alternatorChargerA"));
        return Derived.computed(
                "alternator charger: power at the bank",
                current.value() * bank.chargingVoltageV().value(),
                Unit.WATT,
                Formula.definition("P = I V_c"),
                current.as("I"),
                bank.chargingVoltageV().as("V_c"));
    }

    /** Rated power less losses and heat: what reaches the battery in the sun that is asked for. */
    private static Derived solarW(RechargeBrief brief, Derived ambientC) {
        BuiltSystem system = brief.system();
        ArrayModel array = ArrayModel.of(system.panel(), 0);
        Derived rated =
                Derived.given("rated power of the array", system.arrayW(), Unit.WATT, system.at("solarPowerW"));
        Derived sun = sunShare(brief);
        double cellC = ambientC.value() + array.riseKPerWm2().value() * sun.value() * FULL_SUN_W_PER_M2;
        Derived cell = Derived.computed(
                "cells in that sun",
                cellC,
                Unit.CELSIUS,
                Formula.definition("Tc = Ta + r s x 1000 W/m2"),
                ambientC.as("Ta"),
                array.riseKPerWm2().as("r"),
                sun.as("s"));
        double heat = 1 + array.powerCoefficient().value() * (cellC - REFERENCE_C);
        return Derived.computed(
                "array: power at the bank",
                rated.value()
                        * sun.value()
                        * array.lossFactor().value()
                        * Math.max(0, heat)
                        * array.controllerEfficiency().value(),
                Unit.WATT,
                Formula.definition("P = P_r s f (1 + gamma (Tc - 25)) n"),
                rated.as("P_r"),
                sun.as("s"),
                array.lossFactor().as("f"),
                array.powerCoefficient().as("gamma"),
                cell.as("Tc"),
                array.controllerEfficiency().as("n"));
    }

    private static Derived sunShare(RechargeBrief brief) {
        return Derived.byDefault(
                        "share of full sun",
                        1,
                        Unit.SHARE,
                        brief.at("sunShare"),
                        "A clear noon all the while; mornings, clouds and a flat roof in winter give far less",
                        Source.commonPractice())
                .unlessGiven(brief.sunShare());
    }
}
