package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * A system as it stands, or as it is proposed.
 *
 * @param busVoltageV 12, 24 or 48
 * @param nominalEnergyWh rated energy of the bank [Wh]
 * @param solarPowerW rated power of the array [W], 0 for none
 * @param alternatorChargerA rated output of the alternator charger at bus voltage [A], 0 for none
 * @param shoreChargerW rated output of the shore charger [W], 0 for none
 * @param inverter what is known of the inverter
 * @param standbyW constant draw of monitors, outlets and electronics [W]; a default if absent
 */
public record BuiltSystem(
        double busVoltageV,
        Chemistry chemistry,
        double nominalEnergyWh,
        double solarPowerW,
        PanelMount panel,
        double alternatorChargerA,
        double shoreChargerW,
        InverterSpec inverter,
        OptionalDouble standbyW) {}
