package wayside.sizing.charging;

/**
 * A moment of a recharge.
 *
 * @param hour since its start [h]
 * @param stateOfCharge [share]
 * @param powerW into the terminals [W]
 */
public record ChargePoint(double hour, double stateOfCharge, double powerW) {}
