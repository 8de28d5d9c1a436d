package wayside.sizing.ledger;

import wayside.sizing.storage.ChargeAcceptance;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.storage.HourOfCharge;
import wayside.sizing.storage.Peukert;
import wayside.sizing.storage.TemperatureCapacity;

/**
 * A bank in the plain figures of the ledger.
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
    final double chargePerStored;
    final double withdrawnPerGiven;
    final double chargeW;
    final double dischargeW;
    final double knee;
    final HourOfCharge hourOfCharge;

    final double selfDischargePerHour;
    /** What an hour of standing leaves of the store [share]. */
    final double hourOfStanding;

    final double reserveWh;
    private final CapacityTable capacity;
    private final double lowestChargeC;
    private final double highestChargeC;
    private final double lowestDischargeC;
    private final double highestDischargeC;
    /** From this temperature on the bank gives all it has [C]. */
    private final double fullFromC;

    /**
     * A bank.
     *
     * @param nominalWh rated [Wh], above 0
     * @param ageShare what age has left of that, 1 when new
     * @param chargeVoltageRatio voltage while charging by nominal voltage
     */
    public LedgerBank(ChemistryData data, double nominalWh, double ageShare, double chargeVoltageRatio) {
        this(data, nominalWh, ageShare, chargeVoltageRatio, BankBounds.NONE);
    }

    /** One whose maker says what it bears. */
    LedgerBank(ChemistryData data, double nominalWh, double ageShare, double chargeVoltageRatio, BankBounds bounds) {
        this.data = data;
        energyWh = nominalWh * ageShare;
        usableShare = data.usableShare().value();
        chargeEfficiency = data.chargeEfficiency().value();
        dischargeEfficiency = data.dischargeEfficiency().value();
        chargePerStored = 1 / chargeEfficiency;
        withdrawnPerGiven = 1 / dischargeEfficiency;
        chargeW = bounds.chargeW(ChargeAcceptance.maximumPowerW(
                energyWh, data.maximumChargeRate().typical().value(), chargeVoltageRatio));
        dischargeW = bounds.dischargeW(energyWh * data.maximumDischargeRate().value());
        knee = data.chargeKnee().value();
        hourOfCharge = new HourOfCharge(chargeW, knee, chargeEfficiency, energyWh);
        selfDischargePerHour =
                -Math.expm1(Math.log1p(-data.selfDischargePerMonth().value()) / HOURS_A_MONTH);
        hourOfStanding = 1 - selfDischargePerHour;
        lowestChargeC = data.lowestChargeC().value();
        highestChargeC = data.highestChargeC().value();
        lowestDischargeC = data.lowestDischargeC().value();
        highestDischargeC = data.highestDischargeC().value();
        capacity = CapacityTable.of(data.chemistry());
        fullFromC = TemperatureCapacity.fullFromC(data.chemistry());
        reserveWh = RESERVE_SHARE * usableShare * energyWh;
    }

    /** What a warm bank gives at a load [Wh]. */
    double availableWh(double loadW) {
        double multiple = loadW * data.ratedHours().value() / energyWh;
        return energyWh
                * usableShare
                * Peukert.share(multiple, data.peukertExponent().value());
    }

    /**
     * Energy that must stay in the cells at a temperature [Wh]; all of it outside the discharge window.
     *
     * @param availableWh what a warm bank gives at the hour's load [Wh]
     */
    double floorWh(double cellC, double availableWh) {
        if (cellC >= fullFromC && cellC <= highestDischargeC) {
            return energyWh - availableWh;
        }
        return mayDischarge(cellC) ? energyWh - availableWh * capacity.at(cellC) : energyWh;
    }

    /** The most that must stay in the cells wherever they may be discharged [Wh]. */
    double coldFloorWh(double availableWh) {
        return energyWh - availableWh * capacity.at(lowestDischargeC);
    }

    boolean mayDischarge(double cellC) {
        return cellC >= lowestDischargeC && cellC <= highestDischargeC;
    }

    /** The most that the terminals give in an hour from what the cells may be drawn by [Wh]. */
    double givesW(double aboveWh) {
        double most = aboveWh * dischargeEfficiency;
        return most < 0 ? 0 : most < dischargeW ? most : dischargeW;
    }

    boolean mayCharge(double cellC) {
        return cellC >= lowestChargeC && cellC <= highestChargeC;
    }

    /**
     * What an hour of a source puts into the cells [Wh].
     *
     * @param offeredW [W], 0 or more
     * @param roomWh left in them [Wh]
     */
    double storedWh(double offeredW, double roomWh, double cellC) {
        if (!mayCharge(cellC)) {
            return 0;
        }
        return hourOfCharge.takesAll(offeredW, roomWh)
                ? offeredW * chargeEfficiency
                : hourOfCharge.storedWh(offeredW, roomWh);
    }

    boolean tooCold(double cellC) {
        return cellC < lowestChargeC;
    }
}
