package wayside.sizing.ledger;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sky;
import wayside.sizing.solar.array.ArrayModel;
import wayside.sizing.solar.sky.MonthAt;
import wayside.sizing.solar.sky.SkyMonth;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Unit;

/** Trips for tests. */
final class Trips {
    private Trips() {}

    static ModelWeather weather(double latitude, int month, int nights, double clearness, double uncertainty) {
        return new ModelWeather(List.of(sky(latitude, month, nights, clearness, uncertainty)), 8, 11);
    }

    static StaySky sky(double latitude, int month, int nights, double clearness, double uncertainty) {
        MonthAt at = new MonthAt(
                At.ROOT,
                Place.of(latitude, 0),
                month,
                Optional.of(new Sky.Clearness(clearness)),
                Optional.of(new Ambient(15, 10)),
                "stay");
        ArrayModel array = ArrayModel.of(PanelMount.FLAT, latitude);
        return new StaySky(latitude, month, nights, SkyMonth.of(at), array, SkyScatter.of(uncertainty, 0));
    }

    static LedgerBank bank(Chemistry chemistry, double nominalWh) {
        return new LedgerBank(ChemistryData.of(chemistry), nominalWh, 1, 1.06);
    }

    static double[] always(double value) {
        double[] values = new double[Unit.HOURS_PER_DAY];
        Arrays.fill(values, value);
        return values;
    }

    static LedgerDay day(int nights, double loadW, double otherW, double shoreW) {
        return new LedgerDay(nights, HourlyUses.steady(loadW), HourlyUses.steady(otherW), always(0), always(shoreW));
    }

    /** A run without any sun in air that does not change [C]. */
    static RunWeather dark(int nights, double airC) {
        RunWeather run = new RunWeather(nights * Unit.HOURS_PER_DAY);
        Arrays.fill(run.boxC, (float) airC);
        run.follow(0);
        return run;
    }

    /** The first run of a weather in air that does not change [C]. */
    static RunWeather first(Weather weather, double airC) {
        RunWeather run = new RunWeather(weather.hours());
        weather.fill(0, run);
        Arrays.fill(run.boxC, (float) airC);
        run.follow(0);
        return run;
    }

    /** A run to its end. */
    static Tally run(Ledger ledger, RunWeather weather) {
        Tally tally = ledger.tally();
        ledger.run(weather, tally, ledger.cells(weather), new double[weather.boxC.length]);
        return tally;
    }
}
