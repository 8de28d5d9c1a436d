package wayside.sizing.solar;

import java.util.List;
import wayside.sizing.brief.Ambient;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** A month's air: its mean and the swing of a day. */
record AirFigures(Derived meanC, Derived dailySwingK) {
    /** The lapse rate in K/m. */
    private static final Expression AT_ELEVATION = Expression.of(
            "T = T_0 - 0.005 z", Source.standard("Recommendation ITU-R P.1510-1 and P.1511-2", "5 K per km"));

    /** k is the inland coefficient. */
    private static final Expression SWING = Expression.of(
                    "D = max(D_min, min(D_max, (KT / k)^2))",
                    Source.standard(
                            "FAO Irrigation and Drainage Paper 56, after Hargreaves & Samani", "eq. 50 turned round"))
            .with("k", 0.16, Unit.COUNT)
            .with("D_min", 3, Unit.KELVIN)
            .with("D_max", 18, Unit.KELVIN);

    static AirFigures of(MonthAt at, SkySource source, Derived clearness, List<Assumption> choices) {
        if (at.ambient().isPresent()) {
            Ambient ambient = at.ambient().get();
            return new AirFigures(
                    Derived.given(
                            at.label() + ": mean air temperature", ambient.meanC(), Unit.CELSIUS, ambient.at("meanC")),
                    ambient.dailySwingC().isPresent()
                            ? Derived.given(
                                    at.label() + ": daily swing of the air",
                                    ambient.dailySwingC().getAsDouble(),
                                    Unit.KELVIN,
                                    ambient.at("dailySwingC"))
                            : swing(at, clearness));
        }
        Derived mean = source.cells().isPresent()
                ? world(at, source.cells().get())
                : LatitudeBand.of(at.place().latitude(), at.month())
                        .temperatureC(at.label() + ": mean air temperature");
        choices.add(choice(at, mean, source.cells().isPresent()));
        return new AirFigures(mean, swing(at, clearness));
    }

    private static Assumption choice(MonthAt at, Derived mean, boolean cells) {
        // rms 1.3 K where checked; a band of latitude holds coasts and mountains.
        double error = cells ? 2 : 6;
        return Assumption.choice(
                at.at("ambient"),
                at.label() + ": air temperature",
                (cells ? SkyBasis.WORLD.code() : SkyBasis.LATITUDE.code()) + ": mean " + Math.round(mean.value())
                        + " C, most likely " + Math.round(mean.value() - error) + " to "
                        + Math.round(mean.value() + error) + " C",
                "No air temperature was given for the month",
                cells ? SkySource.WORLD : mean.source());
    }

    private static Derived world(MonthAt at, CellMonth cells) {
        Derived seaLevel = Derived.lookedUp(
                at.label() + ": mean air temperature as at sea level",
                cells.seaLevelC(),
                Unit.CELSIUS,
                "solar/world-climatology",
                "month " + at.month(),
                SkySource.WORLD);
        Derived elevation = Derived.byDefault(
                        at.label() + ": elevation",
                        cells.elevationM(),
                        Unit.METRE,
                        at.place().at("elevationM"),
                        "Mean elevation of the land round about; in mountains give the place's own",
                        SkySource.WORLD)
                .unlessGiven(at.place().elevationM());
        return AT_ELEVATION.value(
                at.label() + ": mean air temperature", Unit.CELSIUS, seaLevel.as("T_0"), elevation.as("z"));
    }

    private static Derived swing(MonthAt at, Derived clearness) {
        return SWING.value(at.label() + ": daily swing of the air", Unit.KELVIN, clearness.as("KT"));
    }
}
