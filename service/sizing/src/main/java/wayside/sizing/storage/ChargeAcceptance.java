package wayside.sizing.storage;

import wayside.sizing.trace.Expression;

/**
 * How fast a battery takes charge: the maximum power up to a knee, then a share of it that falls with the room that is
 * left, {@code P(s) = P_max min(1, (1 - s) / (1 - s_k))} with s the state of charge and s_k the knee [share]. At
 * constant voltage this is the exponential taper of the current in time, {@code I = I_0 exp(-t/tau)} with
 * {@code tau = (1 - s_k) C / I_0}. A weaker source meets the taper later, where the battery takes no more than it gives.
 *
 * <p>From s_0 to s_1 [share] it takes {@code t = (s_k - s_0) E / (eta P) + tau ln((1 - s_k) / (1 - s_1))},
 * {@code tau = E (1 - k) / (eta P_max)}: s_k [share] where the bank begins to take less than the source gives, k [share] the
 * knee at the maximum power P_max [W], P [W] the source but not more than P_max, E [Wh] the rated energy, eta [share] the
 * charge efficiency. The ledger has an hour of it in closed form, {@link HourOfCharge}.
 *
 * <p>Valid for a charge in one go at a steady temperature. Common practice, no source; it is held against the 1.2 Ah/I
 * rule and a measured recharge in the tests.
 */
public final class ChargeAcceptance {
    /** State of charge where the taper of a source begins. */
    public static final Expression TAPER_START = Expression.commonPractice("s_k = 1 - (1 - k) min(1, P_in / P_max)");

    /** Hours before it. */
    public static final Expression STEADY_HOURS =
            Expression.definition("t1 = max(0, min(s_k, s1) - s0) / (P_in eta / E)");

    /** Hours of it. */
    public static final Expression TAPER_HOURS =
            Expression.commonPractice("t2 = ln(max(1, (1 - max(s_k, s0)) / (1 - s1))) / (P_max eta / (E (1 - k)))");

    private ChargeAcceptance() {}

    /**
     * The most that the terminals take below the knee.
     *
     * @param nominalEnergyWh of the bank [Wh]
     * @param maximumRate charging current per rated capacity [1/h]
     * @param chargeVoltageRatio voltage while charging by nominal voltage
     * @return [W]
     */
    public static double maximumPowerW(double nominalEnergyWh, double maximumRate, double chargeVoltageRatio) {
        return nominalEnergyWh * maximumRate * chargeVoltageRatio;
    }

    /** The most that the terminals take at a state of charge [W]. */
    public static double powerW(double stateOfCharge, double knee, double maximumPowerW) {
        return maximumPowerW * Math.min(1, Math.max(0, 1 - stateOfCharge) / (1 - knee));
    }

    /**
     * State of charge after a time with a steady source, exact for this model.
     *
     * @param stateOfCharge at the start [share]
     * @param sourceW offered at the terminals [W], 0 or more
     * @param maximumPowerW taken below the knee [W], above 0
     * @param knee below 1 [share]
     * @param chargeEfficiency stored per energy put in [share]
     * @param nominalEnergyWh of the bank [Wh], above 0
     * @param hours [h], 0 or more
     * @return [share], below 1 unless it began there
     */
    public static double stateAfter(
            double stateOfCharge,
            double sourceW,
            double maximumPowerW,
            double knee,
            double chargeEfficiency,
            double nominalEnergyWh,
            double hours) {
        double steadyW = Math.min(sourceW, maximumPowerW);
        if (steadyW <= 0 || stateOfCharge >= 1) {
            return stateOfCharge;
        }
        double perHour = steadyW * chargeEfficiency / nominalEnergyWh;
        double meets = taperStart(steadyW, maximumPowerW, knee);
        double hoursToTaper = Math.max(0, meets - stateOfCharge) / perHour;
        if (hours <= hoursToTaper) {
            return stateOfCharge + perHour * hours;
        }
        double room = 1 - Math.max(stateOfCharge, meets);
        double decay = maximumPowerW * chargeEfficiency / (nominalEnergyWh * (1 - knee));
        return 1 - room * Math.exp(-decay * (hours - hoursToTaper));
    }

    /** State of charge at which a source of this power begins to be too much [share]. */
    private static double taperStart(double sourceW, double maximumPowerW, double knee) {
        return 1 - (1 - knee) * Math.min(1, sourceW / maximumPowerW);
    }
}
