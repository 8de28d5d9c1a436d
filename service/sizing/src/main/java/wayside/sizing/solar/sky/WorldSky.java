package wayside.sizing.solar.sky;

import java.util.List;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/** The sunshine of a month as the world climatology has it, with the error it is known to have. */
final class WorldSky {
    /** Eight of ten normally distributed errors lie within this many standard deviations. */
    private static final double EIGHT_OF_TEN = 1.2816;

    private static final Expression LOW = edge("H_low = H (1 - z e)");
    private static final Expression HIGH = edge("H_high = H (1 + z e)");

    private WorldSky() {}

    static SkyFigures figures(SkySource source, CellMonth month, Derived h0, List<Assumption> choices) {
        Derived clearness = source.cell("clearness", month.clearness().orElse(0));
        Derived spread =
                source.cell("day-to-day spread of clearness", month.spread().orElse(0));
        Derived horizontal = SkyFigures.irradiation(source.horizontalLabel(), clearness, h0);
        Derived error = error(source.at());
        double reach = EIGHT_OF_TEN * error.value();
        choices.add(source.choice(
                SkyBasis.WORLD,
                clearness,
                clearness.value() * (1 - reach),
                clearness.value() * (1 + reach),
                "No irradiation was given for the month; " + month.cells() + " land cells lie round the place"));
        return new SkyFigures(
                SkyBasis.WORLD,
                clearness,
                spread,
                horizontal,
                edge(LOW, source.horizontalLabel() + ", low end of eight cases in ten", horizontal, error),
                edge(HIGH, source.horizontalLabel() + ", high end of eight cases in ten", horizontal, error));
    }

    private static Expression edge(String text) {
        return Expression.of(text, SkySource.WORLD).with("z", EIGHT_OF_TEN, Unit.COUNT);
    }

    private static Derived edge(Expression edge, String label, Derived horizontal, Derived error) {
        return edge.value(label, Unit.KILOWATT_HOUR_PER_SQUARE_METRE, horizontal.as("H"), error.as("e"));
    }

    private static Derived error(MonthAt at) {
        return Derived.lookedUp(
                at.label() + ": error of the climatology, rms",
                rms(
                        Math.abs(at.place().latitude()),
                        SolarCalendar.northernMonth(at.place().latitude(), at.month())),
                Unit.SHARE,
                SkySource.TABLE,
                "error 2",
                SkySource.WORLD);
    }

    /** As the table's own head reports it. */
    private static double rms(double northDegrees, int northernMonth) {
        if (northDegrees < 24) {
            return 0.13;
        }
        boolean winter = northernMonth >= 11 || northernMonth <= 2;
        return northDegrees >= 45 && winter ? 0.13 : 0.09;
    }
}
