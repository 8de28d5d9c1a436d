package wayside.sizing.ledger;

import java.util.Arrays;
import java.util.List;
import wayside.sizing.trace.Unit;

/** One system on one trip: what every hour of every stay brings, before the weather. Safe to share between threads. */
public final class Ledger {
    final LedgerBank bank;
    final LedgerHeater heater;
    private final LedgerStay[][] kinds;
    private final double startWh;

    /**
     * A system on a trip.
     *
     * @param heater of the bank
     * @param solarW rated power of the array [W]
     * @param startShare state of charge at the first midnight, 0 to 1
     */
    public Ledger(List<LedgerDay> days, LedgerBank bank, LedgerHeater heater, double solarW, double startShare) {
        this.bank = bank;
        this.heater = heater;
        startWh = startShare * bank.energyWh;
        kinds = days.stream().map(day -> kinds(day, bank, solarW)).toArray(LedgerStay[][]::new);
    }

    /** One whose bank has no heater. */
    public Ledger(List<LedgerDay> days, LedgerBank bank, double solarW, double startShare) {
        this(days, bank, LedgerHeater.NONE, solarW, startShare);
    }

    private static LedgerStay[] kinds(LedgerDay day, LedgerBank bank, double solarW) {
        return day.uses.days().stream()
                .map(uses -> new LedgerStay(day, uses, bank, solarW))
                .toArray(LedgerStay[]::new);
    }

    /** Room for how warm the bank is in a run. */
    CellWarmth cells(RunWeather weather) {
        return new CellWarmth(weather.boxC.length, heater);
    }

    /** An account for its runs. */
    Tally tally() {
        return new Tally(bank);
    }

    /** One that also knows which loads go short. */
    Tally tally(Shortage shortage) {
        return new Tally(bank, shortage);
    }

    /** What engine and hookup offer on the trip, as far as loads and bank can take it [Wh]. */
    double offeredWh() {
        double offeredWh = 0;
        for (LedgerStay[] stay : kinds) {
            LedgerDay day = stay[0].day;
            LedgerStay usual = stay[stay.length / 2];
            for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
                double offeredW = day.alternatorW[hour] + day.shoreW[hour];
                double usedW = usual.uses.essentialW[hour] + usual.uses.otherW[hour];
                offeredWh += day.nights() * Math.min(offeredW, usedW + bank.chargeW);
            }
        }
        return offeredWh;
    }

    /** Nights of each stay. */
    int[] nights() {
        return Arrays.stream(kinds).mapToInt(stay -> stay[0].day.nights()).toArray();
    }

    /**
     * Simulates one run.
     *
     * @param weather of the run
     * @param cells is filled with how warm the bank is
     * @param storeWh is filled with what the bank holds after each hour [Wh]
     */
    void run(RunWeather weather, Tally tally, CellWarmth cells, double[] storeWh) {
        tally.begin(startWh);
        cells.begin(weather, kinds[0][0].day.warmerK);
        int date = 0;
        for (int index = 0; index < kinds.length; index++) {
            LedgerStay[] stay = kinds[index];
            LedgerDay day = stay[0].day;
            for (int night = 0; night < day.nights(); night++) {
                LedgerStay kind = stay[day.uses.indexAt(weather.dayC[date])];
                int midnight = date * Unit.HOURS_PER_DAY;
                cells.fillDay(weather, midnight, day.warmerK);
                tally.simulate(kind, 0, Unit.HOURS_PER_DAY, midnight, weather, cells, storeWh);
                tally.accrue(kind, 1);
                tally.shortage.closeDay(index);
                date++;
            }
        }
    }

    /**
     * Follows one run until the day on which an essential load goes short, if it ever does.
     *
     * @param tally says whether and when; it is no account of the energy
     * @return whether one does
     */
    boolean goesFlat(RunWeather weather, Tally tally, CellWarmth cells) {
        tally.begin(startWh);
        cells.begin(weather, kinds[0][0].day.warmerK);
        double store = startWh;
        int date = 0;
        for (LedgerStay[] stay : kinds) {
            LedgerDay day = stay[0].day;
            for (int night = 0; night < day.nights(); night++) {
                LedgerStay kind = stay[day.uses.indexAt(weather.dayC[date])];
                int midnight = date * Unit.HOURS_PER_DAY;
                cells.fillDay(weather, midnight, day.warmerK);
                store = tally.follow(kind, midnight, weather, cells, store);
                date++;
                if (tally.isFlat()) {
                    return true;
                }
            }
        }
        return false;
    }
}
