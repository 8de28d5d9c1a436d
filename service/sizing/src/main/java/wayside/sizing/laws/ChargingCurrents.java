package wayside.sizing.laws;

import java.util.Optional;
import wayside.sizing.charging.AlternatorCharger;
import wayside.sizing.charging.ChargerNeed;
import wayside.sizing.system.ArrayChoice;
import wayside.sizing.system.Chargers;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * What each source can push into the bank, as far as there is one [A].
 *
 * @param sunA in full sun, as far as the controllers let it through
 * @param engineA of the charger on the alternator
 * @param hookupA of the shore charger
 */
public record ChargingCurrents(Optional<Derived> sunA, Optional<Derived> engineA, Optional<Derived> hookupA) {
    private static final Expression SUN = Expression.commonPractice("I_sun = min(P / V_c, I_controllers)");
    private static final Expression SUN_ALONE = Expression.commonPractice("I_sun = P / V_c");
    private static final Expression HOOKUP = Expression.definition("I = P / V_c");

    static ChargingCurrents of(Chargers chargers, Optional<ArrayChoice> array) {
        Derived volts = chargers.need().chargingVoltageV();
        return new ChargingCurrents(
                array.map(sun -> SUN.value(
                        "sun: charging current at rated power",
                        Unit.AMPERE,
                        sun.powerW().as("P"),
                        volts.as("V_c"),
                        sun.controllers().togetherA().as("I_controllers"))),
                chargers.alternator().map(AlternatorCharger::chargerCurrentA),
                chargers.shore().map(shore -> hookup(volts, shore.chargerPowerW())));
    }

    /** Of a system that stands: its controllers are taken to let all of the array through. */
    public static ChargingCurrents of(
            ChargerNeed need, Optional<Derived> arrayW, Optional<Derived> engineA, Optional<Derived> shoreW) {
        return new ChargingCurrents(
                arrayW.map(power -> SUN_ALONE.value(
                        "sun: charging current at rated power",
                        Unit.AMPERE,
                        power.as("P"),
                        need.chargingVoltageV().as("V_c"))),
                engineA,
                shoreW.map(power -> hookup(need.chargingVoltageV(), power)));
    }

    private static Derived hookup(Derived volts, Derived powerW) {
        return HOOKUP.value("shore charger: current into the bank", Unit.AMPERE, powerW.as("P"), volts.as("V_c"));
    }
}
