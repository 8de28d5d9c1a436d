package wayside.sizing.solar.sky;

import java.util.OptionalDouble;
import wayside.sizing.brief.Ambient;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** How the days of a month differ in temperature, and how far a day swings. */
final class AirDays {
    static final Source TYPICAL_YEARS = Source.dataset(
            "Daily temperatures of 1,207 typical years (NREL TMY3 2008 and others)",
            "fitted on the month's mean, the year's range and the latitude; land cells of 3 degrees, bilinear");
    private static final String TABLE = "solar/world-temperature-days";

    /** The factor is the mean square instead of the mean logarithm, and the month's own mean that S is about. */
    private static final Expression SPREAD_OFF_LAND = Expression.of(
                    "s = min(s_max, 1.17 * 1.2026 * max(1, min(45, A))^0.5959"
                            + " * exp(0 - 0.0293 max(0 - 20, T) - 0.0124 abs(L)))",
                    TYPICAL_YEARS)
            .with("s_max", 7, Unit.KELVIN);

    private static final Expression SWING_OFF_LAND =
            Expression.of("D = 4.5 - 2.5 * max(0, min(1, (abs(L) - 35) / 15))", TYPICAL_YEARS);

    /** Of a clear day in proportion to its clearness. */
    private static final Expression SWING =
            Expression.of("D = min(D_max, D_w KT / KT_w)", TYPICAL_YEARS).with("D_max", 18, Unit.KELVIN);

    private AirDays() {}

    /** The customer's own swing, else the table's in proportion to the customer's clearness. */
    static Derived swingK(MonthAt at, SkySource source, Derived clearness) {
        String label = at.label() + ": daily swing of the air";
        OptionalDouble own = at.ambient().map(Ambient::dailySwingC).orElse(OptionalDouble.empty());
        if (own.isPresent()) {
            return Derived.given(
                    label,
                    own.getAsDouble(),
                    Unit.KELVIN,
                    at.ambient().orElseThrow().at("dailySwingC"));
        }
        if (source.cells().isEmpty()) {
            return SWING_OFF_LAND.value(label, Unit.KELVIN, at.latitudeDegrees().as("L"));
        }
        CellMonth cells = source.cells().get();
        Derived table = lookedUp(at, at.sky().isPresent() ? label + ", of the table" : label, cells.swingK());
        if (at.sky().isEmpty() || cells.clearness().isEmpty()) {
            return table;
        }
        return SWING.value(
                label,
                Unit.KELVIN,
                table.as("D_w"),
                clearness.as("KT"),
                source.cell("clearness of the climatology", cells.clearness().getAsDouble())
                        .as("KT_w"));
    }

    /** Standard deviation of a day's mean about the month's. */
    static Derived spreadK(MonthAt at, SkySource source, Derived meanC) {
        String label = at.label() + ": spread of the days' mean temperature";
        if (source.cells().isPresent()) {
            return lookedUp(at, label, source.cells().get().temperatureSpreadK());
        }
        SeaClimate sea = SeaClimate.at(at.place().latitude(), at.place().longitude());
        Derived year = Derived.lookedUp(
                at.label() + ": warmest less coldest month",
                sea.yearK(),
                Unit.KELVIN,
                AirFigures.SEA_TABLE,
                "all months",
                AirFigures.ITU);
        return SPREAD_OFF_LAND.value(
                label,
                Unit.KELVIN,
                year.as("A"),
                meanC.as("T"),
                at.latitudeDegrees().as("L"));
    }

    private static Derived lookedUp(MonthAt at, String label, double value) {
        return Derived.lookedUp(label, value, Unit.KELVIN, TABLE, "month " + at.month(), TYPICAL_YEARS);
    }
}
