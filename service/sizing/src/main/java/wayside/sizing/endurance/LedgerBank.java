package wayside.sizing.endurance;

import wayside.sizing.storage.ChargeAcceptance;
import wayside.sizing.storage.ChargeWindow;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.storage.Peukert;
import wayside.sizing.storage.TemperatureCapacity;

/**
 * A bank in the plain figures that the ledger reckons with.
 *
 * <p>Energy that cold or a high current keeps in the cells isn't lost, it can't be taken out now: the lowest state of charge that
 * the loads may draw to is {@code 1 - f_use f_T f_P}, f_use the usable share, f_T the capacity at temperature, f_P Peukert's share
 * at the hour's own loads (the sun's help at that hour isn't counted, which errs to the safe side).
 */
public final class LedgerBank {
    private static final double HOURS_A_MONTH = 730;
    /** Loads that may stop leave this part of the usable energy to those that must not. Common practice, no source. */
    static final double RESERVE_SHARE = 0.25;

    private final ChemistryData data;
    final double energyWh;
    final double usableShare;
    final double chargeEfficiency;
    final double dischargeEfficiency;
    final double chargeW;
    final double dischargeW;
    final double knee;
    /** What an hour in the taper leaves of the room: {@code exp(-decay)}. */
    final double hourOfTaper;

    final double decayPerHour;
    final double selfDischargePerHour;
    final double reserveWh;

    /**
     * A bank.
     *
     * @param nominalWh rated [Wh], above 0
     * @param ageShare what age has left of that, 1 when new
     * @param chargeVoltageRatio voltage while charging by nominal voltage
     */
    public LedgerBank(ChemistryData data, double nominalWh, double ageShare, double chargeVoltageRatio) {
        this.data = data;
        energyWh = nominalWh * ageShare;
        usableShare = data.usableShare().value();
        chargeEfficiency = data.chargeEfficiency().value();
        dischargeEfficiency = data.dischargeEfficiency().value();
        chargeW = ChargeAcceptance.maximumPowerW(
                energyWh, data.maximumChargeRate().typical().value(), chargeVoltageRatio);
        dischargeW = energyWh * data.maximumDischargeRate().value();
        knee = data.chargeKnee().value();
        decayPerHour = chargeW * chargeEfficiency / (energyWh * (1 - knee));
        hourOfTaper = Math.exp(-decayPerHour);
        selfDischargePerHour =
                -Math.expm1(Math.log1p(-data.selfDischargePerMonth().value()) / HOURS_A_MONTH);
        reserveWh = RESERVE_SHARE * usableShare * energyWh;
    }

    /** Energy that must stay in the cells at a temperature and a load [Wh]; all of it outside the discharge window. */
    double floorWh(double cellC, double loadW) {
        if (!ChargeWindow.mayDischarge(data, cellC)) {
            return energyWh;
        }
        double multiple = loadW * data.ratedHours().value() / energyWh;
        double available = usableShare
                * TemperatureCapacity.capacityShare(data.chemistry(), cellC)
                * Peukert.share(multiple, data.peukertExponent().value());
        return energyWh * (1 - available);
    }

    boolean mayCharge(double cellC) {
        return ChargeWindow.mayCharge(data, cellC);
    }

    boolean tooCold(double cellC) {
        return cellC < data.lowestChargeC().value();
    }
}
