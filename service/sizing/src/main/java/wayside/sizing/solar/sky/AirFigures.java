package wayside.sizing.solar.sky;

import java.util.List;
import wayside.sizing.brief.Ambient;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * A month's air.
 *
 * @param meanC of the month [C]
 * @param dailySwingK between a day's lowest and highest, as a cosine [K]
 * @param daySpreadK standard deviation of a day's mean about the month's [K]
 * @param errorK standard deviation of what is not known of the month's mean beside the year's own scatter [K]
 */
record AirFigures(Derived meanC, Derived dailySwingK, Derived daySpreadK, Derived errorK) {
    static final Source ITU = Source.standard("Recommendation ITU-R P.1510-1 and P.1511-2", "5 K per km");
    static final String SEA_TABLE = "solar/world-temperature-sea";

    /** The lapse rate in K/m. */
    private static final Expression AT_ELEVATION = Expression.of("T = T_0 - 0.005 z", ITU);

    private static final double ERROR_ON_LAND_K = 1.0;
    private static final double ERROR_OFF_LAND_K = 1.5;

    static AirFigures of(MonthAt at, SkySource source, Derived clearness, List<Assumption> choices) {
        Derived mean = at.ambient().isPresent() ? given(at, at.ambient().get()) : table(at, source);
        if (at.ambient().isEmpty()) {
            choices.add(choice(at, mean, source.cells().isPresent()));
        }
        return new AirFigures(
                mean, AirDays.swingK(at, source, clearness), AirDays.spreadK(at, source, mean), error(at, source));
    }

    private static Derived given(MonthAt at, Ambient ambient) {
        return Derived.given(at.label() + ": mean air temperature", ambient.meanC(), Unit.CELSIUS, ambient.at("meanC"));
    }

    private static Assumption choice(MonthAt at, Derived mean, boolean land) {
        double error = land ? 2 : RemoteAir.rangeK(at);
        return Assumption.choice(
                at.at("ambient"),
                at.label() + ": air temperature",
                (land ? "world-climatology" : "world-temperature-sea") + ": mean " + Math.round(mean.value())
                        + " C, most likely " + Math.round(mean.value() - error) + " to "
                        + Math.round(mean.value() + error) + " C",
                land
                        ? "No air temperature was given for the month"
                        : "No air temperature was given for the month and no land cell is near; of the sea round about, or the ice",
                land ? SkySource.WORLD : ITU);
    }

    /** The cells as at sea level, brought up to the place. */
    private static Derived table(MonthAt at, SkySource source) {
        String label = at.label() + ": mean air temperature as at sea level";
        String row = "month " + at.month();
        if (source.cells().isPresent()) {
            CellMonth cells = source.cells().get();
            Derived seaLevel =
                    Derived.lookedUp(label, cells.seaLevelC(), Unit.CELSIUS, SkySource.TABLE, row, SkySource.WORLD);
            return atElevation(
                    at,
                    seaLevel,
                    cells.elevationM(),
                    "Mean elevation of the land round about; in mountains give the place's own",
                    SkySource.WORLD);
        }
        SeaClimate sea = SeaClimate.at(at.place().latitude(), at.place().longitude());
        Derived seaLevel = Derived.lookedUp(label, sea.seaLevelC(at.month()), Unit.CELSIUS, SEA_TABLE, row, ITU);
        return atElevation(
                at,
                seaLevel,
                sea.elevationM(),
                "Mean elevation of the cells round about; of an island give the place's own",
                ITU);
    }

    private static Derived atElevation(MonthAt at, Derived seaLevel, double cellsM, String reason, Source source) {
        Derived elevation = Derived.byDefault(
                        at.label() + ": elevation",
                        cellsM,
                        Unit.METRE,
                        at.place().at("elevationM"),
                        reason,
                        source)
                .unlessGiven(at.place().elevationM());
        return AT_ELEVATION.value(
                at.label() + ": mean air temperature", Unit.CELSIUS, seaLevel.as("T_0"), elevation.as("z"));
    }

    private static Derived error(MonthAt at, SkySource source) {
        String label = at.label() + ": uncertainty of the mean air temperature";
        if (at.ambient().isPresent()) {
            return Derived.convention(
                    label,
                    0,
                    Unit.KELVIN,
                    "It was given; days that stay warm or cold together are the year's own scatter",
                    Source.commonPractice());
        }
        boolean land = source.cells().isPresent();
        return Derived.byDefault(
                label,
                land ? ERROR_ON_LAND_K : ERROR_OFF_LAND_K,
                Unit.KELVIN,
                at.at("ambient"),
                "What the table does not know of the place beside the year's own scatter",
                land ? AirDays.TYPICAL_YEARS : ITU);
    }
}
