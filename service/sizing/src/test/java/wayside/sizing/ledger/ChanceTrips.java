package wayside.sizing.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.solar.array.ArrayModel;
import wayside.sizing.solar.epw.EpwReader;
import wayside.sizing.solar.epw.HourlyStations.Station;
import wayside.sizing.solar.epw.TypicalMonth;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.solar.sky.MonthAt;
import wayside.sizing.solar.sky.SkyMonth;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Unit;

/**
 * The trips of one month at one station: each start day from a full bank, in the real hours and in those that are drawn about the
 * month's means.
 */
final class ChanceTrips {
    private static final double[] BANK_DAYS = {0.4, 0.6, 0.9, 1.3, 1.8, 2.5};
    private static final double[] LOAD_SHARES = {0.6, 0.7, 0.8, 0.9, 1.0, 1.05};
    private static final double SMALL_DAYS = 0.7;
    private static final double PANEL_W = 100;
    /** What an hour's driving brings, by a day's load. */
    private static final double DRIVING_SHARE = 0.25;
    /** Months darker than this are no solar trips [kWh/m2]. */
    private static final double DARK_KWH_M2 = 0.5;

    private final ChanceCase asked;
    private final Station station;
    private final SkyMonth sky;
    private final double meanWh;
    private final boolean frost;
    private final List<RunWeather> real;
    private final List<RunWeather> drawn;

    private ChanceTrips(ChanceCase asked, Station station, int month, TypicalMonth means, int runs) {
        this.asked = asked;
        this.station = station;
        double latitude = station.year().place().latitude();
        ArrayModel array = ArrayModel.of(PanelMount.of(asked.tiltDegrees(), latitude < 0 ? 0 : 180, 0), latitude);
        MonthAt at = new MonthAt(
                At.ROOT,
                station.year().place(),
                month,
                asked.given() ? Optional.of(means.sky(At.ROOT)) : Optional.empty(),
                asked.given()
                        ? Optional.of(new Ambient(At.ROOT, means.meanC(), OptionalDouble.empty()))
                        : Optional.empty(),
                "month");
        sky = SkyMonth.of(at);
        meanWh = PANEL_W * SolarMonth.of(at, array).yieldWhPerW().value();
        frost = isFrosty(means, sky);
        real = real(station, array, month);
        drawn = drawn(at, array, runs);
    }

    /** The month's trips, or none where it is dark or has fewer days than a trip. */
    static Optional<ChanceTrips> of(ChanceCase asked, Station station, int month, int runs) {
        TypicalMonth means = TypicalMonth.of(station.year(), month);
        return means.irradiationKwhM2() < DARK_KWH_M2
                ? Optional.empty()
                : Optional.of(new ChanceTrips(asked, station, month, means, runs));
    }

    /** Cold days are no rarity: two standard deviations below the mean it freezes. Known without the hours. */
    private static boolean isFrosty(TypicalMonth means, SkyMonth sky) {
        return means.meanC() - 2 * sky.daySpreadK().value() < 0;
    }

    private List<RunWeather> real(Station of, ArrayModel array, int month) {
        ReplayedWeather hours = new ReplayedWeather(of.year(), array, List.of(), 0, 0, 0);
        List<RunWeather> trips = new ArrayList<>();
        int first = SolarCalendar.dayOfYear(month, 1) - 1;
        for (int start = 0; start + asked.nights() <= SolarCalendar.daysIn(month); start++) {
            RunWeather trip = new RunWeather(asked.nights() * Unit.HOURS_PER_DAY);
            for (int hour = 0; hour < trip.boxC.length; hour++) {
                int ofYear = ((first + start) * Unit.HOURS_PER_DAY + hour) % EpwReader.HOURS;
                trip.yieldWhPerW[hour] = hours.yieldWhPerW(ofYear);
                trip.boxC[hour] = (float) of.year().airC(ofYear);
            }
            trip.follow(asked.lagHours());
            trips.add(trip);
        }
        return trips;
    }

    private List<RunWeather> drawn(MonthAt at, ArrayModel array, int runs) {
        double ofMean = asked.given() ? SkyScatter.MEAN_GIVEN : SkyScatter.MEAN_FROM_TABLE;
        StaySky stay = new StaySky(
                at.place().latitude(),
                at.month(),
                asked.nights(),
                sky,
                array,
                SkyScatter.of(ofMean, SkyScatter.SPREAD));
        Weather weather = new ModelWeather(List.of(stay), asked.lagHours(), 1);
        List<RunWeather> all = new ArrayList<>();
        for (int run = 0; run < runs; run++) {
            RunWeather one = new RunWeather(weather.hours());
            weather.fill(run, one);
            all.add(one);
        }
        return all;
    }

    /** What was told and what came true, of each system. */
    List<ChanceCell> cells() {
        List<ChanceCell> cells = new ArrayList<>();
        for (double bankDays : BANK_DAYS) {
            for (double loadShare : LOAD_SHARES) {
                Ledger ledger = ledger(loadShare * meanWh, bankDays);
                double told = share(ledger, drawn);
                double came = share(ledger, real);
                boolean small = bankDays < SMALL_DAYS;
                cells.add(new ChanceCell(station.name(), frost, small, told, real.size(), came * real.size()));
            }
        }
        return cells;
    }

    private Ledger ledger(double plainWh, double bankDays) {
        double dailyWh = asked.drivingHours() > 0 ? plainWh / (1 - DRIVING_SHARE) : plainWh;
        ChemistryData data = ChemistryData.of(asked.chemistry());
        double nominal = bankDays
                * dailyWh
                / (data.usableShare().value() * data.dischargeEfficiency().value());
        double[] engine = new double[Unit.HOURS_PER_DAY];
        if (asked.drivingHours() > 0) {
            engine[10] = DRIVING_SHARE * dailyWh;
        }
        LedgerDay day = new LedgerDay(
                asked.nights(),
                HourlyUses.steady(dailyWh / Unit.HOURS_PER_DAY),
                HourlyUses.steady(0),
                engine,
                new double[Unit.HOURS_PER_DAY]);
        return new Ledger(List.of(day.warmerBy(asked.offsetK())), new LedgerBank(data, nominal, 1, 1), PANEL_W, 1);
    }

    private static double share(Ledger ledger, List<RunWeather> trips) {
        Tally tally = ledger.tally();
        CellWarmth cells = ledger.cells(trips.get(0));
        long flat = trips.stream()
                .filter(trip -> ledger.goesFlat(trip, tally, cells))
                .count();
        return (double) flat / trips.size();
    }
}
