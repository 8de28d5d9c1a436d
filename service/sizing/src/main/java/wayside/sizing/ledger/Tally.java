package wayside.sizing.ledger;

import java.util.List;
import wayside.sizing.trace.Unit;

/**
 * The account of one run: the bank's store, and where each watt-hour came from and went. An hour is one step: loads first take
 * what the sources give, then the bank gives or takes the rest. Powers of an hour and energies are the same number.
 *
 * <p>A source is accrued with all it offers and a load with all it wants; the hours in which something is left over or goes
 * short take it off again. What follows from these sums is calculated when it is asked for, not by the hour.
 */
final class Tally {
    private static final double NOTHING_WH = 1e-9;
    /** A bank this full isn't said to have lost charge to the cold. */
    private static final double NOTABLE_ROOM = 0.01;

    private final LedgerBank bank;
    final Shortage shortage;
    private double storedWh;
    private double leakWh;

    double beginWh;
    double endWh;
    double solarWh;
    double alternatorWh;
    double shoreWh;
    double surplusWh;
    double servedWh;
    double wantedLoadsWh;
    double wantedInverterWh;
    double wantedStandbyWh;
    double wantedHeaterWh;
    double withdrawnWh;
    double unmetEssentialWh;
    double unmetOtherWh;
    double unmetLoadsWh;
    double unmetInverterWh;
    double unmetStandbyWh;
    double unmetHeaterWh;
    double lowestWh;
    double coldRefusedWh;
    int coldHours;
    int flatHours;
    int firstFlatHour;

    Tally(LedgerBank bank) {
        this(bank, new Shortage(List.of()));
    }

    Tally(LedgerBank bank, Shortage shortage) {
        this.bank = bank;
        this.shortage = shortage;
    }

    /**
     * Begins a run.
     *
     * @param startWh that the bank holds [Wh]
     */
    void begin(double startWh) {
        beginWh = startWh;
        endWh = startWh;
        lowestWh = startWh;
        storedWh = leakWh = 0;
        wantedLoadsWh = wantedInverterWh = wantedStandbyWh = wantedHeaterWh = unmetHeaterWh = 0;
        solarWh = alternatorWh = shoreWh = surplusWh = servedWh = withdrawnWh = 0;
        unmetEssentialWh = unmetOtherWh = unmetLoadsWh = unmetInverterWh = unmetStandbyWh = coldRefusedWh = 0;
        coldHours = flatHours = 0;
        firstFlatHour = -1;
    }

    boolean isFlat() {
        return flatHours > 0;
    }

    /** Lost in the bank: into it, out of it, by standing [Wh]. */
    double storageLossWh() {
        return storedWh * (bank.chargePerStored - 1) + withdrawnWh * (1 - bank.dischargeEfficiency) + leakWh;
    }

    /** Energy-balance error: sources less loads, losses and what the bank gained [Wh]; 0 but for rounding. */
    double imbalanceWh() {
        return solarWh + alternatorWh + shoreWh - servedWh - storageLossWh() - (endWh - beginWh);
    }

    /** Accrues what so many days of a kind bring without the sun, and what their loads want. */
    void accrue(LedgerStay kind, double days) {
        alternatorWh += days * kind.day.alternatorWh;
        shoreWh += days * kind.day.shoreWh;
        servedWh += days * kind.uses.wantedWh();
        wantedLoadsWh += days * kind.uses.loadsWh;
        wantedInverterWh += days * kind.uses.inverterWh;
        wantedStandbyWh += days * kind.uses.standbyWh;
    }

    /**
     * Simulates hours of a day, one after another.
     *
     * @param from first hour of the day
     * @param until the hour it stops before
     * @param midnight hour of the trip at which the day began
     * @param weather by hour of the trip
     * @param cells how warm the bank is and what its heater takes, by hour of the trip
     * @param storeWh is filled with what the bank holds after each hour of the trip [Wh]
     */
    void simulate(
            LedgerStay stay,
            int from,
            int until,
            int midnight,
            RunWeather weather,
            CellWarmth cells,
            double[] storeWh) {
        double store = endWh;
        for (int hour = from; hour < until; hour++) {
            int now = midnight + hour;
            double cellC = cells.cellC[now];
            double heaterW = cells.heaterW[now];
            double sunWh = stay.solarW * weather.yieldWhPerW[now];
            solarWh += sunWh;
            if (heaterW > 0) {
                wantedHeaterWh += heaterW;
                servedWh += heaterW;
            }
            double spare = sunWh + stay.sparePowerW[hour] - heaterW;
            double standing = spare >= 0
                    ? store + charge(spare, store, cellC, stay, hour)
                    : store - discharge(-spare, store, cellC, sunWh, heaterW, stay, hour, now);
            leakWh += standing * bank.selfDischargePerHour;
            store = standing * bank.hourOfStanding;
            storeWh[now] = store;
        }
        endWh = store;
    }

    /**
     * The same for a whole day without an account: only whether, and when, an essential load goes short.
     *
     * @return what the bank holds after it [Wh]
     */
    double follow(LedgerStay stay, int midnight, RunWeather weather, CellWarmth cells, double begunWith) {
        double store = begunWith;
        for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
            int now = midnight + hour;
            double cellC = cells.cellC[now];
            double heaterW = cells.heaterW[now];
            double sunWh = stay.solarW * weather.yieldWhPerW[now];
            double spare = sunWh + stay.sparePowerW[hour] - heaterW;
            double standing = spare >= 0
                    ? store + bank.storedWh(spare, bank.energyWh - store, cellC)
                    : store - given(-spare, store, cellC, sunWh, heaterW, stay, hour, now) * bank.withdrawnPerGiven;
            store = standing * bank.hourOfStanding;
        }
        return store;
    }

    /** The sources give more than the loads take: what goes into the cells [Wh]. */
    private double charge(double spare, double store, double cellC, LedgerStay stay, int hour) {
        double room = bank.energyWh - store;
        if (!bank.mayCharge(cellC)) {
            curtail(spare, stay.day, hour);
            if (bank.tooCold(cellC) && spare > 0 && room > NOTABLE_ROOM * bank.energyWh) {
                coldHours++;
                coldRefusedWh += bank.hourOfCharge.storedWh(spare, room) * bank.chargePerStored;
            }
            return 0;
        }
        double stored = spare * bank.chargeEfficiency;
        if (!bank.hourOfCharge.takesAll(spare, room)) {
            stored = bank.hourOfCharge.storedWh(spare, room);
            curtail(spare - stored * bank.chargePerStored, stay.day, hour);
        }
        storedWh += stored;
        return stored;
    }

    /** What nobody takes is taken off the hookup first, then off the engine, then off the sun. */
    private void curtail(double idleWh, LedgerDay day, int hour) {
        double shore = smaller(idleWh, day.shoreW[hour]);
        double engine = smaller(idleWh - shore, day.alternatorW[hour]);
        double sun = idleWh - shore - engine;
        shoreWh -= shore;
        alternatorWh -= engine;
        solarWh -= sun;
        surplusWh += sun;
    }

    /** The loads take more than the sources give: what goes out of the cells [Wh]. */
    private double discharge(
            double wanted,
            double store,
            double cellC,
            double sunWh,
            double heaterW,
            LedgerStay stay,
            int hour,
            int hourOfTrip) {
        double withdrawn = given(wanted, store, cellC, sunWh, heaterW, stay, hour, hourOfTrip) * bank.withdrawnPerGiven;
        withdrawnWh += withdrawn;
        lowestWh = smaller(store - withdrawn, lowestWh);
        return withdrawn;
    }

    /** What the terminals give of it; the account of what goes short is kept [Wh]. */
    private double given(
            double wanted,
            double store,
            double cellC,
            double sunWh,
            double heaterW,
            LedgerStay stay,
            int hour,
            int hourOfTrip) {
        // The usual hour: enough is there even for the coldest cell, so that it does not matter how cold this one is.
        if (wanted > bank.givesW(store - stay.coldFloorWh[hour] - bank.reserveWh) || !bank.mayDischarge(cellC)) {
            double above = store - bank.floorWh(cellC, stay.availableWh[hour]);
            if (wanted > bank.givesW(above - bank.reserveWh)) {
                return ration(above, sunWh, heaterW, stay, hour, hourOfTrip);
            }
        }
        return wanted;
    }

    /** Essential loads first, the others from what is above the reserve. */
    private double ration(double above, double sunWh, double heaterW, LedgerStay stay, int hour, int hourOfTrip) {
        DayUses uses = stay.uses;
        double essentialW = uses.essentialW[hour] + heaterW;
        double sources = sunWh + stay.day.alternatorW[hour] + stay.day.shoreW[hour];
        double toEssential = smaller(sources, essentialW);
        double essentialNeed = essentialW - toEssential;
        double otherNeed = uses.otherW[hour] - (sources - toEssential);
        double essential = smaller(essentialNeed, bank.givesW(above));
        double other = smaller(otherNeed, larger(0, bank.givesW(above - bank.reserveWh) - essential));
        if (essentialNeed - essential + otherNeed - other > NOTHING_WH) {
            goShort(essentialNeed - essential, otherNeed - other, heaterW, uses, hour, hourOfTrip);
        }
        return essential + other;
    }

    private void goShort(double essential, double other, double heaterW, DayUses uses, int hour, int hourOfTrip) {
        servedWh -= essential + other;
        unmetEssentialWh += essential;
        unmetOtherWh += other;
        double part = essential > 0 ? essential / (uses.essentialW[hour] + heaterW) : 0;
        shed(uses.essential, hour, part);
        unmetHeaterWh += part * heaterW;
        double otherPart = other > 0 ? other / uses.otherW[hour] : 0;
        shed(uses.other, hour, otherPart);
        shortage.goesShort(hour, essential > NOTHING_WH ? part : 0, other > NOTHING_WH ? otherPart : 0);
        if (essential > NOTHING_WH) {
            flatHours++;
            if (firstFlatHour < 0) {
                firstFlatHour = hourOfTrip;
            }
        }
    }

    private void shed(HourlyUses uses, int hour, double share) {
        unmetLoadsWh += share * uses.loadsW[hour];
        unmetInverterWh += share * uses.inverterW[hour];
        unmetStandbyWh += share * uses.standbyW[hour];
    }

    // Math.min and Math.max mind NaN and the sign of zero, and the next hour waits for them.

    private static double smaller(double a, double b) {
        return a < b ? a : b;
    }

    private static double larger(double a, double b) {
        return a > b ? a : b;
    }
}
