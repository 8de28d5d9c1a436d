package wayside.sizing.storage;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * Rated energy that a bank of a chemistry needs: the larger of what the days ask for and what the current asks for.
 *
 * <p>Days: {@code E = E_d n (1 + m) / (eta_d f f_T f_I)} with E_d [Wh] the day's energy, n [d] the autonomy, m [share]
 * the margin, eta_d [share] the discharge efficiency, f [share] the part of the rated energy to count on, f_T and f_I
 * [share] the parts that cold and high currents leave. Here {@code f = min(f_use, f_age)}: the usable share and the share
 * left at the end of life do not multiply, for a bank that is held to half keeps a reserve, and age eats that reserve
 * first. The method of IEEE 1013 takes the largest of these demands likewise (from memory).
 *
 * <p>At a high current f_I is Peukert's share of a bank that is not yet known. Solved for it, E_0 [Wh] being the rated
 * energy at a small current, P [W] the power at which the average watt-hour leaves, t_n [h] the rated hours, k [1]
 * Peukert's exponent: {@code E = (E_0 (P t_n)^(k-1))^(1/k)}. That is above E_0 just where {@code P t_n} is, and below it
 * the current is small.
 *
 * <p>Current: {@code E = P V_cell / (V_low r)} with P [W] everything running, r [1/h] the highest steady discharge rate, V_cell and
 * V_low [V] the nominal and the lowest voltage of a cell: current is highest when the bank is low.
 *
 * <p>Valid for banks that are charged between trips. Common practice, no source, but for the temperature figures.
 */
public final class BatterySizing {
    private static final Expression NEEDED = Expression.commonPractice("E = max(E1, E2)");
    private static final Expression AT_A_SMALL_CURRENT =
            Expression.commonPractice("E0 = E_d n (1 + m) / (eta_d f f_T)");
    private static final Expression FOR_THE_DAYS =
            Expression.commonPractice("E1 = max(E0, (E0 (P t_n)^(k - 1))^(1 / k))");
    private static final Expression FOR_THE_CURRENT = Expression.commonPractice("E2 = P V_cell / (V_low r)");
    private static final Expression COUNTED = Expression.commonPractice("f = min(f_use, f_age)");

    private BatterySizing() {}

    /** Rated energy of the smallest bank that will do [Wh]. */
    public static Derived nominalEnergyWh(ChemistryData data, BatteryNeed need) {
        return NEEDED.value(
                name(data, "rated energy needed"),
                Unit.WATT_HOUR,
                forTheDays(data, need).as("E1"),
                forTheCurrent(data, need).as("E2"));
    }

    private static Derived forTheDays(ChemistryData data, BatteryNeed need) {
        Derived slowWh = AT_A_SMALL_CURRENT.value(
                name(data, "rated energy for the days at a small current"),
                Unit.WATT_HOUR,
                need.dailyWh().as("E_d"),
                need.autonomyDays().as("n"),
                need.margin().as("m"),
                data.dischargeEfficiency().as("eta_d"),
                countedShare(data).as("f"),
                TemperatureCapacity.capacityShare(data.chemistry(), need.coldC())
                        .as("f_T"));
        return FOR_THE_DAYS.value(
                name(data, "rated energy for the days"),
                Unit.WATT_HOUR,
                slowWh.as("E0"),
                need.steadyPowerW().as("P"),
                data.ratedHours().as("t_n"),
                data.peukertExponent().as("k"));
    }

    /** Rated energy below which a bank can't give the highest current [Wh]. */
    public static Derived forTheCurrent(ChemistryData data, BatteryNeed need) {
        return FOR_THE_CURRENT.value(
                name(data, "rated energy for the highest current"),
                Unit.WATT_HOUR,
                need.peakPowerW().as("P"),
                data.cellVoltageV().as("V_cell"),
                data.lowestCellVoltageV().as("V_low"),
                data.maximumDischargeRate().as("r"));
    }

    private static Derived countedShare(ChemistryData data) {
        return COUNTED.value(
                name(data, "share of the rated energy to count on"),
                Unit.SHARE,
                data.usableShare().as("f_use"),
                data.endOfLifeShare().as("f_age"));
    }

    static String name(ChemistryData data, String what) {
        return data.chemistry().code() + " bank: " + what;
    }
}
