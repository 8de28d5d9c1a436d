package wayside.sizing.recharge;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.ChargingKind;
import wayside.sizing.brief.RechargeBrief;
import wayside.sizing.charging.ChargerNeed;
import wayside.sizing.charging.ChargingSource;
import wayside.sizing.charging.HookupLimit;
import wayside.sizing.charging.ShoreCharger;
import wayside.sizing.solar.array.ArrayModel;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** What the sources of a built system offer at the battery's terminals. */
final class RechargeSources {
    private static final Expression CELL =
            Expression.definition("Tc = Ta + r s G").with("G", 1000, Unit.WATT_PER_SQUARE_METRE);
    private static final Expression POWER = Expression.definition("P = P_r s f max(0, 1 + gamma (Tc - T_ref)) n")
            .with("T_ref", 25, Unit.CELSIUS);

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
            sources.add(new ChargingSource(ChargingKind.SHORE.code(), asTheHookupLetsIt(system, power)));
        }
        return sources;
    }

    /** As far as the hookup lets it through, where that was given. */
    private static Derived asTheHookupLetsIt(BuiltSystem system, Derived power) {
        return system.mains().hookupLimitA().isPresent()
                ? ShoreCharger.givenW(power, HookupLimit.powerW(system.mains()))
                : power;
    }

    private static boolean runs(RechargeBrief brief, ChargingKind kind) {
        return brief.sources().isEmpty() || brief.sources().contains(kind);
    }

    private static Derived alternatorW(BuiltSystem system, ChargerNeed bank) {
        Derived current = Derived.given(
                "alternator charger: rated output", system.alternatorA(), Unit.AMPERE, system.at("alternatorChargerA"));
        return bank.powerW("alternator charger: power at the bank", current);
    }

    /** Rated power less losses and heat: what reaches the battery in the sun that is asked for. */
    private static Derived solarW(RechargeBrief brief, Derived ambientC) {
        BuiltSystem system = brief.system();
        ArrayModel array = ArrayModel.of(system.panel(), 0);
        Derived rated = Derived.given("rated power of the array", system.arrayW(), Unit.WATT, system.at("solarPowerW"));
        Derived sun = sunShare(brief);
        Derived cell = CELL.value(
                "array: cell temperature in that sun",
                Unit.CELSIUS,
                ambientC.as("Ta"),
                array.riseKPerWm2().as("r"),
                sun.as("s"));
        return POWER.value(
                "array: power at the bank",
                Unit.WATT,
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
