package wayside.sizing.solar;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wayside.sizing.brief.Sky;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Finds the sunshine of a month: the request first, then the world climatology, then the latitude. */
record SkySource(MonthAt at, Optional<CellMonth> cells) {
    static final Source WORLD = Source.dataset(
            "World climatology from NASA MERRA-2 2011-2015 (Gelaro and others 2017), calibrated on NREL TMY3 2008",
            "land cells of 3 degrees, bilinear");

    /** Eight of ten normally distributed errors lie within this many standard deviations. */
    private static final double EIGHT_OF_TEN = 1.2816;

    /** More than any month anywhere has on record: above it the figure is likely in another unit. */
    private static final double BRIGHTEST_MONTH = 0.82;

    static SkySource of(MonthAt at) {
        return new SkySource(
                at, CellMonth.find(at.place().latitude(), at.place().longitude(), at.month()));
    }

    Derived extraterrestrial() {
        Derived latitude = Derived.given(
                at.label() + ": latitude", at.place().latitude(), Unit.DEGREE, at.placePath() + "/latitude");
        Derived month = Derived.given(at.label() + ": month", at.month(), Unit.COUNT, at.path() + "/month");
        return Derived.computed(
                at.label() + ": irradiation above the atmosphere, mean day",
                Extraterrestrial.monthlyKwhM2(at.place().latitude(), at.month()),
                Unit.KILOWATT_HOUR_PER_SQUARE_METRE,
                new Formula(
                        "H0 = 24/pi G0n (cos L cos d sin ws + ws sin L sin d), mean over the days of the month",
                        Source.handbook(
                                "Duffie & Beckman, Solar Engineering of Thermal Processes, 5th ed.",
                                "eq. 1.10.3; declination and distance by Spencer 1971")),
                latitude.as("L"),
                month.as("month"));
    }

    SkyFigures sky(Derived h0, List<Assumption> choices, List<Caution> cautions) {
        if (at.sky().isPresent()) {
            return given(at.sky().get(), h0, cautions);
        }
        return cells.isPresent() && (cells.get().clearness().isPresent() || h0.value() == 0)
                ? world(cells.get(), h0, choices)
                : band(h0, choices);
    }

    private SkyFigures given(Sky sky, Derived h0, List<Caution> cautions) {
        Derived clearness;
        Derived horizontal;
        if (sky instanceof Sky.DailyIrradiation daily) {
            Derived asked = Derived.given(
                    at.label() + ": horizontal irradiation given",
                    daily.kwhPerM2(),
                    Unit.KILOWATT_HOUR_PER_SQUARE_METRE,
                    at.path() + "/sky/dailyIrradiationKwhM2");
            clearness = Derived.computed(
                    at.label() + ": clearness",
                    h0.value() > 0 ? daily.kwhPerM2() / h0.value() : 0,
                    Unit.SHARE,
                    new Formula("KT = H / H0, 0 without sun", SkyFigures.CLEARNESS_INDEX),
                    asked.as("H"),
                    h0.as("H0"));
            horizontal = h0.value() > 0 ? asked : SkyFigures.irradiation(horizontalLabel(), clearness, h0);
        } else {
            double share = ((Sky.Clearness) sky).share();
            clearness = Derived.given(at.label() + ": clearness", share, Unit.SHARE, at.path() + "/sky/clearnessIndex");
            horizontal = SkyFigures.irradiation(horizontalLabel(), clearness, h0);
        }
        doubt(sky, clearness, h0).ifPresent(cautions::add);
        return new SkyFigures(SkyBasis.GIVEN, clearness, spread(clearness), horizontal, horizontal, horizontal);
    }

    private Optional<Caution> doubt(Sky sky, Derived clearness, Derived h0) {
        boolean darkness = h0.value() == 0 && sky instanceof Sky.DailyIrradiation daily && daily.kwhPerM2() > 0;
        if (!darkness && clearness.value() <= BRIGHTEST_MONTH) {
            return Optional.empty();
        }
        String text = darkness
                ? at.label() + ": the sun doesn't rise there in that month, yet irradiation was given. None is counted."
                : String.format(
                        Locale.ROOT,
                        "%s: the sky given lets %.2f of the sunlight above the atmosphere through, more than a"
                                + " month of cloudless days. Check that it is per day and in kWh/m2, not MJ/m2.",
                        at.label(),
                        clearness.value());
        return Optional.of(new Caution("implausible-sky", Severity.WARNING, text, SkyFigures.CLEARNESS_INDEX));
    }

    /** The place keeps its ratio of spread to mean, whatever mean the request gives. */
    private Derived spread(Derived clearness) {
        if (cells.isPresent() && cells.get().spread().isPresent()) {
            double tableMean = cells.get().clearness().orElseThrow();
            double tableSpread = cells.get().spread().getAsDouble();
            return Derived.computed(
                    at.label() + ": day-to-day spread of clearness",
                    clearness.value() * tableSpread / tableMean,
                    Unit.SHARE,
                    new Formula("s = KT s' / KT'", WORLD),
                    clearness.as("KT"),
                    cell("spread of the climatology", tableSpread).as("s'"),
                    cell("clearness of the climatology", tableMean).as("KT'"));
        }
        return Derived.assumed(
                at.label() + ": day-to-day spread of clearness",
                MEAN_SPREAD,
                Unit.SHARE,
                at.path() + "/sky",
                "Mean of the world's land cells; the place has none",
                WORLD);
    }

    private static final double MEAN_SPREAD = 0.132;

    private SkyFigures world(CellMonth month, Derived h0, List<Assumption> choices) {
        Derived clearness = cell("clearness", month.clearness().orElse(0));
        Derived spread = cell("day-to-day spread of clearness", month.spread().orElse(0));
        Derived horizontal = SkyFigures.irradiation(horizontalLabel(), clearness, h0);
        Derived error = error();
        choices.add(choice(
                clearness.value() * (1 - EIGHT_OF_TEN * error.value()),
                clearness.value(),
                clearness.value() * (1 + EIGHT_OF_TEN * error.value()),
                "No irradiation was given for the month; world climatology, " + month.cells()
                        + " cells round the place",
                WORLD,
                SkyBasis.WORLD));
        return new SkyFigures(
                SkyBasis.WORLD,
                clearness,
                spread,
                horizontal,
                edge("low", horizontal, error, -1),
                edge("high", horizontal, error, 1));
    }

    private Derived edge(String name, Derived horizontal, Derived error, int sign) {
        return Derived.computed(
                at.label() + ": horizontal irradiation, " + name + " end of eight months in ten",
                Math.max(0, horizontal.value() * (1 + sign * EIGHT_OF_TEN * error.value())),
                Unit.KILOWATT_HOUR_PER_SQUARE_METRE,
                new Formula(sign < 0 ? "H (1 - 1.28 e)" : "H (1 + 1.28 e)", WORLD),
                horizontal.as("H"),
                error.as("e"));
    }

    /** Error of a month's clearness, from the check on typical-year stations that the table's head reports. */
    private Derived error() {
        double north = Math.abs(at.place().latitude());
        int month = at.place().latitude() < 0 ? (at.month() + 5) % SolarCalendar.MONTHS + 1 : at.month();
        double rms;
        if (north < 24) {
            rms = 0.13;
        } else if (north < 45) {
            rms = 0.09;
        } else {
            rms = month >= 11 || month <= 2 ? 0.13 : 0.09;
        }
        return Derived.lookedUp(
                at.label() + ": error of the climatology, rms",
                rms,
                Unit.SHARE,
                "solar/world-climatology",
                "error 2",
                WORLD);
    }

    private SkyFigures band(Derived h0, List<Assumption> choices) {
        LatitudeBand band = LatitudeBand.of(at.place().latitude(), at.month());
        Derived clearness = band.clearness(at.label() + ": clearness");
        Derived low = band.low(at.label() + ": clearness, low end of eight stations in ten");
        Derived high = band.high(at.label() + ": clearness, high end of eight stations in ten");
        choices.add(choice(
                low.value(),
                clearness.value(),
                high.value(),
                "No irradiation was given and no land cell is near; mean of the stations at that latitude",
                clearness.source(),
                SkyBasis.LATITUDE));
        return new SkyFigures(
                SkyBasis.LATITUDE,
                clearness,
                spread(clearness),
                SkyFigures.irradiation(horizontalLabel(), clearness, h0),
                SkyFigures.irradiation(horizontalLabel() + ", low end of eight stations in ten", low, h0),
                SkyFigures.irradiation(horizontalLabel() + ", high end of eight stations in ten", high, h0));
    }

    private Assumption choice(double low, double middle, double high, String reason, Source source, SkyBasis basis) {
        String value = String.format(
                Locale.ROOT, "%s: clearness %.2f, in eight cases of ten %.2f to %.2f", basis.code(), middle, low, high);
        return Assumption.choice(at.path() + "/sky", at.label() + ": sky", value, reason, source);
    }

    private Derived cell(String what, double value) {
        String row = String.format(
                Locale.ROOT,
                "latitude %.2f, longitude %.2f, month %d",
                at.place().latitude(),
                at.place().longitude(),
                at.month());
        return Derived.lookedUp(at.label() + ": " + what, value, Unit.SHARE, "solar/world-climatology", row, WORLD);
    }

    private String horizontalLabel() {
        return at.label() + ": horizontal irradiation, mean day";
    }
}
