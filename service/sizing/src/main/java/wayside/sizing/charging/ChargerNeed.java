package wayside.sizing.charging;

import wayside.sizing.brief.BankRates;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * The bank that a charger feeds.
 *
 * @param whose opens the labels of what differs from bank to bank: {@code rule of thumb: }; empty for the answer's own
 * @param data of its chemistry
 * @param nominalEnergyWh rated [Wh]
 * @param bankVoltageV nominal [V]
 * @param chargingVoltageV over most of a charge [V]: what a charger's amperes are worth
 * @param acceptedW the most that it takes below the knee [W]
 * @param usualW what its chargers are usually sized for [W]
 * @param dailyWh out of its terminals on a usual day [Wh]
 * @param busVoltageV nominal voltage of the system [V]
 */
public record ChargerNeed(
        String whose,
        ChemistryData data,
        Derived nominalEnergyWh,
        Derived bankVoltageV,
        Derived chargingVoltageV,
        Derived acceptedW,
        Derived usualW,
        Derived dailyWh,
        Derived busVoltageV) {
    /** A few seconds a day charge as a charger of any size does: next to nothing does not ask for an endless one. */
    static final double SHORTEST_HOURS = 0.001;

    private static final Expression CHARGING_VOLTAGE = Expression.definition("V_c = n V_cell");
    private static final Expression ACCEPTED = Expression.commonPractice("P_max = E r (V_c / V)");
    private static final Expression USUAL = Expression.commonPractice("P_usual = E r (V_c / V)");
    private static final Expression HELD = Expression.definition("P_held = min(P, I_max V_c)");
    private static final Expression REFILL = Expression.definition("E_in = E_d / eta");
    private static final Expression POWER = Expression.definition("P = I V_c");
    private static final Expression TAKEN = Expression.definition("P_in = min(P, P_max)");

    public static ChargerNeed of(
            String whose,
            ChemistryData data,
            Derived nominalEnergyWh,
            Derived bankVoltageV,
            Derived busVoltageV,
            Derived dailyWh,
            BankRates rates) {
        Derived charging = CHARGING_VOLTAGE.value(
                "voltage of the bank while charging",
                Unit.VOLT,
                data.cellsInSeries(busVoltageV.value()).as("n"),
                data.meanChargeCellVoltageV().as("V_cell"));
        Derived accepted = ACCEPTED.value(
                whose + "power that the bank takes below the knee",
                Unit.WATT,
                nominalEnergyWh.as("E"),
                data.maximumChargeRate().typical().as("r"),
                charging.as("V_c"),
                bankVoltageV.as("V"));
        Derived usual = USUAL.value(
                whose + "power that its chargers are usually sized for",
                Unit.WATT,
                nominalEnergyWh.as("E"),
                data.usualChargeRate().as("r"),
                charging.as("V_c"),
                bankVoltageV.as("V"));
        return new ChargerNeed(
                whose,
                data,
                nominalEnergyWh,
                bankVoltageV,
                charging,
                held(accepted, charging, rates),
                held(usual, charging, rates),
                dailyWh,
                busVoltageV);
    }

    /** Never more than the bank's maker lets into it. */
    private static Derived held(Derived powerW, Derived chargingV, BankRates rates) {
        if (rates.maximumChargeA().isEmpty()) {
            return powerW;
        }
        Derived most = Derived.given(
                "current that the bank takes at most",
                rates.maximumChargeA().getAsDouble(),
                Unit.AMPERE,
                rates.at("maximumChargeA"));
        return HELD.value(
                powerW.label() + ", its maker's limit kept",
                Unit.WATT,
                powerW.as("P"),
                most.as("I_max"),
                chargingV.as("V_c"));
    }

    /** Energy that a charger must put in each day to replace what was taken [Wh]. */
    public Derived refillWh() {
        return REFILL.value(
                "energy to put in each day",
                Unit.WATT_HOUR,
                dailyWh.as("E_d"),
                data.roundTripEfficiency().as("eta"));
    }

    /** Power of a charger's amperes at the bank [W]. */
    public Derived powerW(String label, Derived currentA) {
        return POWER.value(label, Unit.WATT, currentA.as("I"), chargingVoltageV.as("V_c"));
    }

    /** The same, but not more than the bank takes [W]. */
    Derived takenW(String label, Derived powerW) {
        return TAKEN.value(label, Unit.WATT, powerW.as("P"), acceptedW.as("P_max"));
    }
}
