package wayside.sizing.endurance;

/**
 * The books of one run: the bank's store, and where each watt-hour came from and went. An hour is one step: loads first take
 * what the sources give, then the bank gives or takes the rest. Powers of an hour and energies are the same number.
 */
final class Tally {
    private static final double NOTHING_WH = 1e-9;
    /** A bank this full isn't said to have lost charge to the cold. */
    private static final double NOTABLE_ROOM = 0.01;

    private LedgerBank bank;
    private double storeWh;
    private double chargedWh;
    private double givenWh;
    private double unmetWh;

    double beginWh;
    double solarWh;
    double alternatorWh;
    double shoreWh;
    double surplusWh;
    double servedWh;
    double storageLossWh;
    double withdrawnWh;
    double unmetEssentialWh;
    double unmetOtherWh;
    double unmetLoadsWh;
    double unmetInverterWh;
    double unmetStandbyWh;
    double lowestWh;
    double coldRefusedWh;
    int coldHours;
    int flatHours;
    int firstFlatHour;

    Tally(LedgerBank bank) {
        this.bank = bank;
    }

    void begin(LedgerBank newBank, double startWh) {
        bank = newBank;
        storeWh = startWh;
        beginWh = startWh;
        lowestWh = startWh;
        solarWh = alternatorWh = shoreWh = surplusWh = servedWh = storageLossWh = withdrawnWh = 0;
        unmetEssentialWh = unmetOtherWh = unmetLoadsWh = unmetInverterWh = unmetStandbyWh = coldRefusedWh = 0;
        coldHours = flatHours = 0;
        firstFlatHour = -1;
    }

    boolean isFlat() {
        return flatHours > 0;
    }

    double storeWh() {
        return storeWh;
    }

    double stateOfCharge() {
        return storeWh / bank.energyWh;
    }

    /** The sources give more than the loads take. */
    void charge(double spareW, boolean open, boolean cold) {
        givenWh = 0;
        unmetWh = 0;
        double room = bank.energyWh - storeWh;
        if (!open) {
            chargedWh = 0;
            if (cold && spareW > 0 && room > NOTABLE_ROOM * bank.energyWh) {
                coldHours++;
                coldRefusedWh += (room - roomAfter(room, spareW)) / bank.chargeEfficiency;
            }
            return;
        }
        double stored = spareW > 0 ? room - roomAfter(room, spareW) : 0;
        chargedWh = stored / bank.chargeEfficiency;
        storeWh += stored;
        storageLossWh += chargedWh - stored;
    }

    /** Room left after an hour of charge, as {@link wayside.sizing.storage.ChargeAcceptance} has it, in energy [Wh]. */
    private double roomAfter(double room, double offeredW) {
        double steady = Math.min(offeredW, bank.chargeW);
        double meets = (1 - bank.knee) * bank.energyWh * steady / bank.chargeW;
        double perHour = steady * bank.chargeEfficiency;
        if (room - perHour >= meets) {
            return room - perHour;
        }
        if (room <= meets) {
            return room * bank.hourOfTaper;
        }
        double hoursToTaper = (room - meets) / perHour;
        return meets * Math.exp(-bank.decayPerHour * (1 - hoursToTaper));
    }

    /** The loads take more than the sources give: essential ones first, the others from what is above the reserve. */
    void discharge(
            double sourcesW,
            double essentialW,
            double otherW,
            double floorWh,
            LedgerDay day,
            int hour,
            int hourOfTrip) {
        chargedWh = 0;
        double above = storeWh - floorWh;
        double most = Math.max(0, Math.min(above * bank.dischargeEfficiency, bank.dischargeW));
        double essentialNeed = Math.max(0, essentialW - sourcesW);
        double otherNeed = otherW - Math.max(0, sourcesW - essentialW);
        double essential = Math.min(essentialNeed, most);
        double spare = Math.min(most, (above - bank.reserveWh) * bank.dischargeEfficiency) - essential;
        double other = Math.max(0, Math.min(otherNeed, spare));
        givenWh = essential + other;
        double withdrawn = givenWh / bank.dischargeEfficiency;
        storeWh -= withdrawn;
        withdrawnWh += withdrawn;
        storageLossWh += withdrawn - givenWh;
        lowestWh = Math.min(lowestWh, storeWh);
        unmetWh = essentialNeed - essential + otherNeed - other;
        if (unmetWh > NOTHING_WH) {
            goShort(essentialNeed - essential, otherNeed - other, day, hour, hourOfTrip);
        }
    }

    private void goShort(double essential, double other, LedgerDay day, int hour, int hourOfTrip) {
        unmetEssentialWh += essential;
        unmetOtherWh += other;
        book(day.essential, hour, essential > 0 ? essential / day.essentialW[hour] : 0);
        book(day.other, hour, other > 0 ? other / day.otherW[hour] : 0);
        if (essential > NOTHING_WH) {
            flatHours++;
            if (firstFlatHour < 0) {
                firstFlatHour = hourOfTrip;
            }
        }
    }

    private void book(HourlyUses uses, int hour, double share) {
        unmetLoadsWh += share * uses.loadsW[hour];
        unmetInverterWh += share * uses.inverterW[hour];
        unmetStandbyWh += share * uses.standbyW[hour];
    }

    /** Books what the sources gave, the sun first, and what the bank lost by itself. */
    void close(double sunWh, double alternatorOfferWh, double shoreOfferWh, double wantedWh) {
        double served = wantedWh - unmetWh;
        servedWh += served;
        double used = served + chargedWh - givenWh;
        double fromSun = Math.min(sunWh, used);
        double fromEngine = Math.min(alternatorOfferWh, used - fromSun);
        solarWh += fromSun;
        alternatorWh += fromEngine;
        shoreWh += shoreOfferWh > 0 ? used - fromSun - fromEngine : 0;
        surplusWh += sunWh - fromSun;
        double leak = storeWh * bank.selfDischargePerHour;
        storeWh -= leak;
        storageLossWh += leak;
    }

    /** What the books miss: sources less loads, losses and what the bank gained [Wh]; 0 but for rounding. */
    double imbalanceWh() {
        return solarWh + alternatorWh + shoreWh - servedWh - storageLossWh - (storeWh - beginWh);
    }
}
