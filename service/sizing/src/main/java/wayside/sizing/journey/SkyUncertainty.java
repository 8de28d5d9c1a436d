package wayside.sizing.journey;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import wayside.sizing.brief.DaySpread;
import wayside.sizing.brief.Sampling;
import wayside.sizing.ledger.SkyScatter;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.solar.sky.SkyBasis;
import wayside.sizing.solar.sky.SkyMonth;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * How far a run's sky may lie from the expected one: the year's own scatter, spells longer than the days' chain has, and what
 * the table doesn't know. With these the predicted chances come true in real typical years.
 *
 * @param ofMeans of each stay's month
 * @param ofSpread of the days about it, in all stays
 * @param daySpread whose spread that is
 */
public record SkyUncertainty(List<Derived> ofMeans, Derived ofSpread, DaySpread daySpread) {
    /** q: from the middle to the end that one in ten lies beyond, of a normal distribution. */
    private static final Expression OF_LATITUDE = Expression.commonPractice(
                    "s = max(s_table, (H_high - H_low) / (2 q H))")
            .with("q", 1.2816, Unit.COUNT)
            .with("s_table", SkyScatter.MEAN_FROM_TABLE, Unit.SHARE);

    private static final Source CHECKED = Source.dataset(
            "Daily clearness of typical years, NREL TMY3 2008", "chosen so that predicted chances come true");

    public SkyUncertainty {
        ofMeans = List.copyOf(ofMeans);
    }

    /** Of the stays of a trip, in their order. */
    public static SkyUncertainty of(Sampling sampling, List<SolarMonth> months) {
        List<Derived> ofMeans = new ArrayList<>();
        for (SolarMonth month : months) {
            String label = "stay " + (ofMeans.size() + 1) + ": uncertainty of the sky";
            ofMeans.add(ofMean(label, sampling, month.sky()));
        }
        return new SkyUncertainty(
                ofMeans, ofSpread(sampling), sampling.daySpread().orElse(DaySpread.PLACE));
    }

    SkyScatter scatter(int stay) {
        return new SkyScatter(ofMeans.get(stay).value(), ofSpread.value(), daySpread);
    }

    private static Derived ofSpread(Sampling sampling) {
        String label = "uncertainty of how much days differ";
        String field = sampling.at("spreadUncertainty");
        return Derived.byDefault(
                        label,
                        SkyScatter.SPREAD,
                        Unit.SHARE,
                        field,
                        "Single months are more changeable or steadier than the table says",
                        CHECKED)
                .unlessGiven(sampling.spreadUncertainty());
    }

    private static Derived ofMean(String label, Sampling sampling, SkyMonth sky) {
        String field = sampling.at("skyUncertainty");
        OptionalDouble given = sampling.skyUncertainty();
        if (given.isPresent()) {
            return Derived.given(label, given.getAsDouble(), Unit.SHARE, field);
        }
        if (sky.basis() == SkyBasis.GIVEN) {
            String reason = "Your figure is a mean; single years differ from it";
            return Derived.byDefault(label, SkyScatter.MEAN_GIVEN, Unit.SHARE, field, reason, CHECKED);
        }
        Derived table = Derived.byDefault(
                label,
                SkyScatter.MEAN_FROM_TABLE,
                Unit.SHARE,
                field,
                "Single years differ, and the table is a tenth off here and there",
                CHECKED);
        return sky.basis() == SkyBasis.WORLD || sky.horizontalKwhM2().value() <= 0 ? table : ofLatitude(label, sky);
    }

    private static Derived ofLatitude(String label, SkyMonth sky) {
        return OF_LATITUDE.value(
                label,
                Unit.SHARE,
                sky.highKwhM2().as("H_high"),
                sky.lowKwhM2().as("H_low"),
                sky.horizontalKwhM2().as("H"));
    }
}
