package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.Target;
import wayside.sizing.brief.Trip;
import wayside.sizing.laws.Laws;
import wayside.sizing.recommendation.Recommendation;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Derivation;
import wayside.sizing.trace.Shortfall;

/** Laws that a whole system obeys, whatever is asked. */
class SystemSizerLawsTest {
    private static final int TRIES = 60;

    private static SizedSystem size(Chemistry chemistry, double days, double sunHours, double ambientC, Load... loads) {
        return SystemSizer.size(Briefs.brief(
                        Briefs.wishes(chemistry, 12, 0, 0, InverterSpec.OPEN),
                        days,
                        Briefs.stay(sunHours, ambientC),
                        loads))
                .result()
                .system();
    }

    private static double bankWh(SizedSystem system) {
        return system.battery().bank().nominalEnergyWh().value();
    }

    private static double arrayW(SizedSystem system) {
        return system.array().map(array -> array.powerW().value()).orElse(0.0);
    }

    @Property(tries = TRIES)
    void moreLoadNeverNeedsASmallerSystem(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 5, max = 300) double watts,
            @ForAll @DoubleRange(min = 1, max = 12) double hours,
            @ForAll @DoubleRange(min = 1, max = 300) double more) {
        SizedSystem less = size(chemistry, 2, 4, 15, Load.dc("base", watts, hours));
        SizedSystem greater = size(chemistry, 2, 4, 15, Load.dc("base", watts, hours), Load.dc("more", more, hours));
        assertThat(bankWh(greater)).isGreaterThanOrEqualTo(bankWh(less));
        assertThat(arrayW(greater)).isGreaterThanOrEqualTo(arrayW(less));
    }

    @Property(tries = TRIES)
    void aColderMonthNeverNeedsASmallerLeadAcidBank(
            @ForAll @DoubleRange(min = -20, max = 35) double ambientC,
            @ForAll @DoubleRange(min = 0, max = 20) double colder) {
        Load load = Load.dc("load", 60, 10);
        for (Chemistry chemistry : new Chemistry[] {Chemistry.AGM, Chemistry.GEL, Chemistry.FLOODED}) {
            assertThat(bankWh(size(chemistry, 2, 4, ambientC - colder, load)))
                    .isGreaterThanOrEqualTo(bankWh(size(chemistry, 2, 4, ambientC, load)));
        }
    }

    @Property(tries = TRIES)
    void longerAutonomyNeverNeedsASmallerBank(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 0.5, max = 6) double days,
            @ForAll @DoubleRange(min = 0, max = 4) double longer) {
        Load load = Load.dc("load", 60, 10);
        assertThat(bankWh(size(chemistry, days + longer, 4, 15, load)))
                .isGreaterThanOrEqualTo(bankWh(size(chemistry, days, 4, 15, load)));
    }

    @Property(tries = TRIES)
    void aDarkerSkyNeverNeedsASmallerArray(
            @ForAll @DoubleRange(min = 1, max = 7) double sunHours,
            @ForAll @DoubleRange(min = 0.2, max = 1) double part) {
        Load load = Load.dc("load", 60, 10);
        assertThat(arrayW(size(Chemistry.LFP, 2, sunHours * part, 15, load)))
                .isGreaterThanOrEqualTo(arrayW(size(Chemistry.LFP, 2, sunHours, 15, load)));
    }

    @Property(tries = TRIES)
    void oneMoreStayNeverNeedsASmallerSystem(
            @ForAll @IntRange(min = 1, max = 12) int month,
            @ForAll @IntRange(min = 1, max = 12) int other,
            @ForAll @DoubleRange(min = -60, max = 60) double latitude) {
        Stay one = Stay.of(Place.of(latitude, 10), month, 7).at(new Ambient(15, 8));
        Stay two = Stay.of(Place.of(latitude, 10), other, 7).at(new Ambient(5, 8));
        Load load = Load.dc("load", 60, 10);
        SizedSystem shorter =
                SystemSizer.size(SystemBrief.of(Trip.of(one), load)).result().system();
        SizedSystem longer = SystemSizer.size(SystemBrief.of(Trip.of(one, two), load))
                .result()
                .system();
        assertThat(bankWh(longer)).isGreaterThanOrEqualTo(bankWh(shorter));
        assertThat(longer.arrayNeed().worst().arrayW().value())
                .isGreaterThanOrEqualTo(shorter.arrayNeed().worst().arrayW().value());
    }

    @Property(tries = TRIES)
    void drivingNeverNeedsALargerArray(@ForAll @DoubleRange(min = 0, max = 8) double hours) {
        Load load = Load.dc("load", 100, 10);
        Stay still = Briefs.stay(3, 15);
        SystemBrief without = SystemBrief.of(Trip.of(still), load);
        SystemBrief with = SystemBrief.of(Trip.of(still.driving(hours)), load);
        assertThat(arrayW(SystemSizer.size(with).result().system()))
                .isLessThanOrEqualTo(arrayW(SystemSizer.size(without).result().system()));
    }

    @Property(tries = TRIES)
    void theSystemThatWasSizedPassesItsOwnJudgement(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 10, max = 150) double watts,
            @ForAll @DoubleRange(min = -5, max = 30) double ambientC) {
        Load load = Load.dc("load", watts, 8);
        SizedSystem sized = size(chemistry, 2, 4, ambientC, load);
        SizedSystem judged = SystemSizer.size(Briefs.brief(
                        Briefs.wishes(chemistry, 12, bankWh(sized), arrayW(sized), InverterSpec.OPEN),
                        2,
                        Briefs.stay(4, ambientC),
                        load))
                .result()
                .system();
        assertThat(codes(Laws.of(judged))).isEqualTo(codes(Laws.of(sized)));
    }

    private static List<String> codes(Laws laws) {
        return laws.shortfalls().stream().map(Shortfall::code).toList();
    }

    @Property(tries = TRIES)
    void noQuestionBreaksTheDoor(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @IntRange(min = 1, max = 12) int month,
            @ForAll @DoubleRange(min = 0.01, max = 1e6) double watts,
            @ForAll @DoubleRange(min = 0, max = 24) double hours,
            @ForAll @DoubleRange(min = 0, max = 24) double driving) {
        Stay stay = Stay.of(Place.of(latitude, 20), month, 3).driving(driving).hookedUp(24 - driving);
        SystemBrief brief = new SystemBrief(
                At.ROOT,
                List.of(Load.ac("load", watts, hours)),
                Trip.of(stay),
                Briefs.wishes(chemistry, 24, 0, 0, InverterSpec.OPEN),
                Target.OPEN,
                Sampling.OPEN);
        Answer<Recommendation> answer = SystemSizer.size(brief);
        assertThat(Derivation.of(TracedValues.of(answer.result())).steps()).isNotEmpty();
        assertThat(answer.cautions()).isNotEmpty();
    }
}
