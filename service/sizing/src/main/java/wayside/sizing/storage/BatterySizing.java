package wayside.sizing.storage;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
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
 * <p>Current: {@code E = P / r} with P [W] everything running and r [1/h] the highest steady discharge rate.
 *
 * <p>Valid for banks that are charged between trips. Common practice, no source, but for the temperature figures.
 */
public final class BatterySizing {
    private BatterySizing() {}

    /** Rated energy of the smallest bank that will do [Wh]. */
    public static Derived nominalEnergyWh(ChemistryData data, BatteryNeed need) {
        Derived days = forTheDays(data, need);
        Derived current = forTheCurrent(data, need);
        return Derived.computed(
                name(data, "rated energy needed"),
                Math.max(days.value(), current.value()),
                Unit.WATT_HOUR,
                Formula.commonPractice("E = larger of E1 and E2"),
                days.as("E1"),
                current.as("E2"));
    }

    /**
     * Rated energy for the days at a high current, solved for itself: {@code E = E_0 / f_I(E)}.
     *
     * @param slowWh E_0, rated energy needed if the current were small [Wh], above 0
     * @param powerW at which the energy leaves [W]
     * @param ratedHours of the capacity [h]
     * @param exponent Peukert's
     * @return [Wh], at least {@code slowWh}
     */
    public static double atRateWh(double slowWh, double powerW, double ratedHours, double exponent) {
        double ratedWh = powerW * ratedHours;
        return ratedWh <= slowWh ? slowWh : Math.pow(slowWh * Math.pow(ratedWh, exponent - 1), 1 / exponent);
    }

    private static Derived forTheDays(ChemistryData data, BatteryNeed need) {
        Derived counted = countedShare(data);
        Derived cold = TemperatureCapacity.capacityShare(data.chemistry(), need.coldC());
        double slow = need.dailyWh().value()
                * need.autonomyDays().value()
                * (1 + need.margin().value())
                / (data.dischargeEfficiency().value() * counted.value() * cold.value());
        Derived slowWh = Derived.computed(
                name(data, "rated energy for the days at a small current"),
                slow,
                Unit.WATT_HOUR,
                Formula.commonPractice("E0 = E_d n (1 + m) / (eta_d f f_T)"),
                need.dailyWh().as("E_d"),
                need.autonomyDays().as("n"),
                need.margin().as("m"),
                data.dischargeEfficiency().as("eta_d"),
                counted.as("f"),
                cold.as("f_T"));
        return atRate(data, need, slowWh);
    }

    private static Derived atRate(ChemistryData data, BatteryNeed need, Derived slowWh) {
        return Derived.computed(
                name(data, "rated energy for the days"),
                atRateWh(
                        slowWh.value(),
                        need.steadyPowerW().value(),
                        data.ratedHours().value(),
                        data.peukertExponent().value()),
                Unit.WATT_HOUR,
                Formula.commonPractice("E1 = (E0 (P t_n)^(k-1))^(1/k) if P t_n > E0, else E0 (Peukert)"),
                slowWh.as("E0"),
                need.steadyPowerW().as("P"),
                data.ratedHours().as("t_n"),
                data.peukertExponent().as("k"));
    }

    private static Derived forTheCurrent(ChemistryData data, BatteryNeed need) {
        return Derived.computed(
                name(data, "rated energy for the highest current"),
                need.peakPowerW().value() / data.maximumDischargeRate().value(),
                Unit.WATT_HOUR,
                Formula.commonPractice("E2 = P / r"),
                need.peakPowerW().as("P"),
                data.maximumDischargeRate().as("r"));
    }

    private static Derived countedShare(ChemistryData data) {
        return Derived.computed(
                name(data, "share of the rated energy to count on"),
                Math.min(data.usableShare().value(), data.endOfLifeShare().value()),
                Unit.SHARE,
                Formula.commonPractice("f = smaller of f_use and f_age"),
                data.usableShare().as("f_use"),
                data.endOfLifeShare().as("f_age"));
    }

    static String name(ChemistryData data, String what) {
        return data.chemistry().code() + " bank: " + what;
    }
}
