package wayside.sizing.charging;

import wayside.sizing.storage.ChargeAcceptance;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Unit;

/**
 * The bank that a charger feeds.
 *
 * @param data of its chemistry
 * @param nominalEnergyWh rated [Wh]
 * @param bankVoltageV nominal [V]
 * @param chargingVoltageV over most of a charge [V]: what a charger's amperes are worth
 * @param acceptedW the most that it takes below the knee [W]
 * @param dailyWh out of its terminals on a usual day [Wh]
 */
public record ChargerNeed(
        ChemistryData data,
        Derived nominalEnergyWh,
        Derived bankVoltageV,
        Derived chargingVoltageV,
        Derived acceptedW,
        Derived dailyWh) {

    public static ChargerNeed of(
            ChemistryData data, Derived nominalEnergyWh, Derived bankVoltageV, Derived busVoltageV, Derived dailyWh) {
        Derived cells = data.cellsInSeries(busVoltageV.value());
        Derived charging = Derived.computed(
                "voltage of the bank while charging",
                cells.value() * data.meanChargeCellVoltageV().value(),
                Unit.VOLT,
                Formula.definition("V_c = n V_cell"),
                cells.as("n"),
                data.meanChargeCellVoltageV().as("V_cell"));
        Derived accepted = Derived.computed(
                "power that the bank takes below the knee",
                ChargeAcceptance.maximumPowerW(
                        nominalEnergyWh.value(),
                        data.maximumChargeRate().typical().value(),
                        charging.value() / bankVoltageV.value()),
                Unit.WATT,
                Formula.commonPractice("P_max = r E V_c / V"),
                data.maximumChargeRate().typical().as("r"),
                nominalEnergyWh.as("E"),
                charging.as("V_c"),
                bankVoltageV.as("V"));
        return new ChargerNeed(data, nominalEnergyWh, bankVoltageV, charging, accepted, dailyWh);
    }

    /** Energy that a charger must put in each day to replace what was taken [Wh]. */
    public Derived refillWh() {
        return Derived.computed(
                "energy to put in each day",
                dailyWh.value() / data.roundTripEfficiency().value(),
                Unit.WATT_HOUR,
                Formula.definition("E_in = E_d / eta"),
                dailyWh.as("E_d"),
                data.roundTripEfficiency().as("eta"));
    }

    /** Power of a charger's amperes at the bank [W]. */
    Derived powerW(String label, Derived currentA) {
        return Derived.computed(
                label,
                currentA.value() * chargingVoltageV.value(),
                Unit.WATT,
                Formula.definition("P = I V_c"),
                currentA.as("I"),
                chargingVoltageV.as("V_c"));
    }

    /** The same, but not more than the bank takes [W]. */
    Derived takenW(String label, Derived powerW) {
        return Derived.computed(
                label,
                Math.min(powerW.value(), acceptedW.value()),
                Unit.WATT,
                Formula.definition("P_in = smaller of P and P_max"),
                powerW.as("P"),
                acceptedW.as("P_max"));
    }
}
