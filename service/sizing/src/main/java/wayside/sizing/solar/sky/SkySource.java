package wayside.sizing.solar.sky;

import java.util.List;
import java.util.Optional;
import wayside.sizing.solar.plane.Extraterrestrial;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Finds the sunshine of a month: the request first, then the world climatology, then the latitude. */
record SkySource(MonthAt at, Optional<CellMonth> cells) {
    static final Source WORLD = Source.dataset(
            "World climatology from NASA MERRA-2 2011-2015 (Gelaro and others 2017), calibrated on NREL TMY3 2008",
            "land cells of 3 degrees, bilinear");
    static final String TABLE = "solar/world-climatology";

    private static final double MEAN_SPREAD = 0.132;
    private static final Expression SPREAD = Expression.of("s = KT s_w / KT_w", WORLD);
    private static final NamedOperation EXTRATERRESTRIAL = NamedOperation.of(
            NamedOperation.Kind.MONTH_INTEGRAL,
            "The mean over the days of the month of 24 / pi G_0n (cos L cos d sin ws + ws sin L sin d), G_0n the irradiance"
                    + " at normal incidence, d the declination, ws the sunset hour angle",
            Source.handbook(
                    "Duffie & Beckman, Solar Engineering of Thermal Processes, 5th ed.",
                    "eq. 1.10.3; declination and distance by Spencer 1971"));

    static SkySource of(MonthAt at) {
        return new SkySource(
                at, CellMonth.find(at.place().latitude(), at.place().longitude(), at.month()));
    }

    Derived extraterrestrial() {
        return EXTRATERRESTRIAL.value(
                at.label() + ": irradiation above the atmosphere, mean day",
                Extraterrestrial.monthlyKwhM2(at.place().latitude(), at.month()),
                Unit.KILOWATT_HOUR_PER_SQUARE_METRE,
                at.latitudeDegrees().as("L"),
                at.monthOfYear().as("month"));
    }

    SkyFigures sky(Derived h0, List<Assumption> choices, List<SkyDoubt> doubts) {
        if (at.sky().isPresent()) {
            return GivenSky.figures(this, at.sky().get(), h0, doubts);
        }
        return cells.isPresent() && (cells.get().clearness().isPresent() || h0.value() == 0)
                ? WorldSky.figures(this, cells.get(), h0, choices)
                : latitude(h0, choices);
    }

    private SkyFigures latitude(Derived h0, List<Assumption> choices) {
        LatitudeBand band = LatitudeBand.of(at.place().latitude(), at.month());
        Derived clearness = band.clearness(at.label() + ": clearness");
        Derived low = band.low(at.label() + ": clearness, low end of eight stations in ten");
        Derived high = band.high(at.label() + ": clearness, high end of eight stations in ten");
        choices.add(choice(
                SkyBasis.LATITUDE,
                clearness,
                low.value(),
                high.value(),
                "No irradiation was given and no land cell is near; mean of the stations at that latitude"));
        return new SkyFigures(
                SkyBasis.LATITUDE,
                clearness,
                spread(clearness),
                SkyFigures.irradiation(horizontalLabel(), clearness, h0),
                SkyFigures.irradiation(horizontalLabel() + ", low end of eight stations in ten", low, h0),
                SkyFigures.irradiation(horizontalLabel() + ", high end of eight stations in ten", high, h0));
    }

    /** The place keeps its ratio of spread to mean, whatever mean the request gives. */
    Derived spread(Derived clearness) {
        if (cells.isEmpty() || cells.get().spread().isEmpty()) {
            return Derived.convention(
                    at.label() + ": day-to-day spread of clearness",
                    MEAN_SPREAD,
                    Unit.SHARE,
                    "Mean of the world's land cells; the place has none",
                    WORLD);
        }
        double tableMean = cells.get().clearness().orElseThrow();
        double tableSpread = cells.get().spread().getAsDouble();
        return SPREAD.value(
                at.label() + ": day-to-day spread of clearness",
                Unit.SHARE,
                clearness.as("KT"),
                cell("day-to-day spread of the climatology", tableSpread).as("s_w"),
                cell("clearness of the climatology", tableMean).as("KT_w"));
    }

    /** A figure that the cells round the place give. */
    Derived cell(String what, double value) {
        String row = "latitude " + hundredths(at.place().latitude()) + ", longitude "
                + hundredths(at.place().longitude()) + ", month " + at.month();
        return Derived.lookedUp(at.label() + ": " + what, value, Unit.SHARE, TABLE, row, WORLD);
    }

    /** The sky that we chose, with the range that it may lie in: no false precision. */
    Assumption choice(SkyBasis basis, Derived clearness, double low, double high, String reason) {
        String value = basis.code() + ": clearness " + hundredths(clearness.value()) + ", in eight cases of ten "
                + hundredths(low) + " to " + hundredths(high);
        return Assumption.choice(at.at("sky"), at.label() + ": sky", value, reason, clearness.source());
    }

    String horizontalLabel() {
        return at.label() + ": horizontal irradiation, mean day";
    }

    /** Plain concatenation: a format string costs more than all of a month's sines. */
    private static String hundredths(double value) {
        return Double.toString(Math.round(value * 100) / 100.0);
    }
}
