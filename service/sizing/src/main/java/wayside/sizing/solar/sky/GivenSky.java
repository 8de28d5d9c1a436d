package wayside.sizing.solar.sky;

import java.util.List;
import wayside.sizing.brief.Sky;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/** The sunshine of a month as the request states it, and a doubt when no sky could be like that. */
final class GivenSky {
    /** More than a month of cloudless days brings anywhere: above it the figure is likely in another unit. */
    private static final double BRIGHTEST_MONTH = 0.82;

    private static final Expression CLEARNESS = Expression.of("KT = H / H_0", SkyFigures.CLEARNESS_INDEX);

    /** Without sun none of what was given is counted. */
    private static final Expression WITHOUT_SUN = Expression.definition("KT = 0 H");

    private GivenSky() {}

    static SkyFigures figures(SkySource source, Sky sky, Derived h0, List<SkyDoubt> doubts) {
        Derived clearness;
        Derived horizontal;
        if (sky instanceof Sky.DailyIrradiation daily) {
            Derived asked = asked(source.at(), daily);
            clearness = clearness(source.at(), asked, h0);
            horizontal = h0.value() > 0 ? asked : SkyFigures.irradiation(source.horizontalLabel(), clearness, h0);
            if (h0.value() == 0 && daily.kwhPerM2() > 0) {
                doubts.add(SkyDoubt.darkness(source.at()));
            }
        } else {
            clearness = Derived.given(
                    source.at().label() + ": clearness",
                    ((Sky.Clearness) sky).share(),
                    Unit.SHARE,
                    sky.at("clearnessIndex"));
            horizontal = SkyFigures.irradiation(source.horizontalLabel(), clearness, h0);
        }
        if (clearness.value() > BRIGHTEST_MONTH) {
            doubts.add(SkyDoubt.glare(source.at(), clearness.value()));
        }
        return new SkyFigures(SkyBasis.GIVEN, clearness, source.spread(clearness), horizontal, horizontal, horizontal);
    }

    private static Derived asked(MonthAt at, Sky.DailyIrradiation daily) {
        return Derived.given(
                at.label() + ": horizontal irradiation given",
                daily.kwhPerM2(),
                Unit.KILOWATT_HOUR_PER_SQUARE_METRE,
                daily.at("dailyIrradiationKwhM2"));
    }

    private static Derived clearness(MonthAt at, Derived asked, Derived h0) {
        String label = at.label() + ": clearness";
        return h0.value() > 0
                ? CLEARNESS.value(label, Unit.SHARE, asked.as("H"), h0.as("H_0"))
                : WITHOUT_SUN.value(label, Unit.SHARE, asked.as("H"));
    }
}
