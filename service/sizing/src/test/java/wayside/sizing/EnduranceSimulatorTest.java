package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.DaySpread;
import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.MonthWish;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.Sky;
import wayside.sizing.brief.SolarYieldBrief;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Trip;
import wayside.sizing.brief.YearReading;
import wayside.sizing.endurance.Endurance;
import wayside.sizing.endurance.WhatHelps;
import wayside.sizing.solar.epw.EpwReader;
import wayside.sizing.solar.epw.SyntheticYear;
import wayside.sizing.solar.epw.TypicalMonth;
import wayside.sizing.solar.epw.TypicalYear;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Parameter;

class EnduranceSimulatorTest {
    private static final Place PLACE = Place.of(45, 7);

    private static BuiltSystem system(Chemistry chemistry, double nominalWh, double solarW) {
        return Briefs.built(12, chemistry, nominalWh, solarW, PanelMount.FLAT, 30, 0, OptionalDouble.of(0));
    }

    private static Stay stay(int nights, double meanC) {
        return Stay.of(PLACE, 4, nights).under(new Sky.Clearness(0.45)).at(new Ambient(meanC, 8));
    }

    private static EnduranceBrief brief(double nominalWh, double solarW, Stay stay, Load... loads) {
        return EnduranceBrief.of(system(Chemistry.LFP, nominalWh, solarW), Trip.of(stay), loads)
                .in(Sampling.of(400, 0));
    }

    private static Endurance result(EnduranceBrief brief) {
        return EnduranceSimulator.simulate(brief).result();
    }

    @Test
    void theBooksClose() {
        Endurance answer = result(
                brief(1500, 200, stay(10, 15), Load.dc("fridge", 45, 24).withDuty(0.5), Load.ac("laptop", 60, 3)));
        double sources = answer.sources().solarWh().value()
                + answer.sources().alternatorWh().value()
                + answer.sources().shoreWh().value();
        double uses = answer.uses().loadsWh().value()
                + answer.uses().inverterLossWh().value()
                + answer.uses().standbyWh().value()
                + answer.uses().storageLossWh().value()
                + answer.uses().storeGainWh().value();
        assertThat(uses).isCloseTo(sources, within(1e-9 * (sources + uses)));
        assertThat(answer.uses().balanceErrorWh().value()).isLessThan(1e-9 * (sources + uses));
    }

    // Common practice, no source: without any charge a full LFP bank gives nine tenths of its rating, 0.98 of it at the
    // plug.
    @Test
    void aTripWithoutAnyChargeEndsWhenTheBankDoes() {
        double dailyWh = 24 * 20;
        double nights = Math.floor(0.9 * 0.98 * 1500 / dailyWh);
        Endurance shorter = result(brief(1500, 0, stay((int) nights, 25), Load.dc("all", 20, 24)));
        Endurance longer = result(brief(1500, 0, stay((int) nights + 1, 25), Load.dc("all", 20, 24)));
        assertThat(shorter.chance().value().value()).isZero();
        assertThat(longer.chance().value().value()).isEqualTo(1);
        assertThat(longer.nights().orElseThrow().value()).isEqualTo(nights);
    }

    @Test
    void theLoadItWouldCarryIsCarriedAndALittleMoreIsNot() {
        EnduranceBrief asked = brief(1000, 150, stay(7, 15), Load.dc("all", 25, 24));
        double factor = result(asked).loadFactor().value();
        double just = chance(brief(1000, 150, stay(7, 15), Load.dc("all", 25 * factor, 24)));
        double more = chance(brief(1000, 150, stay(7, 15), Load.dc("all", 25 * factor * 1.02, 24)));
        assertThat(just).isLessThanOrEqualTo(0.05);
        assertThat(more).isGreaterThan(0.05);
    }

    private static double chance(EnduranceBrief brief) {
        return result(brief).chance().value().value();
    }

    // Common practice, no source: a lithium battery isn't charged below 0 C; in a heated cabin it is.
    @Test
    void frostLocksTheSunOutAndAWarmCabinLetsItIn() {
        EnduranceBrief cold = brief(2000, 400, stay(5, -6), Load.dc("all", 15, 24));
        Answer<Endurance> frozen = EnduranceSimulator.simulate(cold);
        assertThat(frozen.result().cycles().coldLockoutHours().value()).isPositive();
        assertThat(frozen.cautions()).extracting(Caution::code).contains("cold-charging");
        Answer<Endurance> warm = EnduranceSimulator.simulate(cold.in(BankPlacement.warmerBy(20)));
        assertThat(warm.result().cycles().coldLockoutHours().value()).isZero();
        assertThat(warm.result().chance().value().value())
                .isLessThanOrEqualTo(frozen.result().chance().value().value());
    }

    // What the hours lost to the cold are seen by: half of the runs lie near the month's mean, the cold ones below.
    @Test
    void showsHowColdTheBankGets() {
        double[][] bankC = result(brief(2000, 400, stay(5, 4), Load.dc("all", 15, 24)))
                .bands()
                .bankC();
        double[][] warmC = result(
                        brief(2000, 400, stay(5, 4), Load.dc("all", 15, 24)).in(BankPlacement.warmerBy(20)))
                .bands()
                .bankC();
        int last = bankC[0].length - 1;
        assertThat(bankC[1][last]).isBetween(2.0, 6.0);
        assertThat(bankC[0][last]).isLessThan(bankC[1][last] - 2);
        assertThat(bankC[2][last]).isGreaterThan(bankC[1][last] + 2);
        assertThat(warmC[1][last]).isCloseTo(bankC[1][last] + 20, within(0.05));
    }

    @Test
    void inFrostAWarmerBatteryHelpsMost() {
        EnduranceBrief cold = brief(1000, 400, stay(14, -6), Load.dc("all", 15, 24));
        assertThat(result(cold).whatHelps().get(0).code()).isEqualTo("warmer-battery");
        assertThat(result(cold.in(BankPlacement.warmerBy(20))).whatHelps())
                .extracting(WhatHelps::code)
                .doesNotContain("warmer-battery");
    }

    @Test
    void ranksWhatHelpsAndNeverRanksAHarmFirst() {
        Endurance answer = result(brief(600, 120, stay(7, 15).driving(0.2), Load.dc("fridge", 25, 24)));
        double chance = answer.chance().value().value();
        assertThat(answer.whatHelps())
                .extracting(WhatHelps::code)
                .contains("more-panel", "more-battery", "more-driving");
        assertThat(answer.whatHelps().get(0).chanceOfRunningFlat().value()).isLessThan(chance);
        assertThat(answer.advice().find("change"))
                .hasValue(Parameter.inner("change", answer.whatHelps().get(0).change()));
    }

    @Test
    void theOrderOfTheLoadsChangesNothing() {
        Load fridge = Load.dc("fridge", 45, 12);
        Load light = Load.dc("light", 10, 5);
        double one = chance(brief(600, 120, stay(7, 15), fridge, light));
        assertThat(chance(brief(600, 120, stay(7, 15), light, fridge))).isEqualTo(one);
    }

    @Test
    void bandsOfALongTripAreThinned() {
        Endurance answer = result(brief(1500, 300, stay(90, 15), Load.dc("all", 15, 24)));
        assertThat(answer.bands().hours().length).isLessThanOrEqualTo(1000);
        assertThat(answer.bands().p05()).hasSameSizeAs(answer.bands().hours());
        for (int i = 0; i < answer.bands().hours().length; i++) {
            assertThat(answer.bands().p05()[i])
                    .isLessThanOrEqualTo(answer.bands().p50()[i]);
            assertThat(answer.bands().p50()[i])
                    .isLessThanOrEqualTo(answer.bands().p95()[i]);
        }
    }

    // A steady sky, no factor on it: what the hours offer is what the month's mean day yields, by the other door. A
    // week that begins on any day of June sees the sun of the solstice, which the month's mean has to a hundredth.
    @Test
    void livesTheHoursOfATypicalYear() {
        TypicalYear year = EpwReader.read(SyntheticYear.lines(0.5, false).iterator());
        EnduranceBrief plain = EnduranceBrief.of(
                system(Chemistry.LFP, 1000, 200), Trip.of(Stay.of(PLACE, 6, 7)), Load.dc("all", 20, 24));
        EnduranceBrief asked = new EnduranceBrief(
                At.ROOT,
                plain.system(),
                plain.loads(),
                plain.trip(),
                OptionalDouble.empty(),
                BankPlacement.OPEN,
                OptionalDouble.empty(),
                new Sampling(
                        At.ROOT,
                        OptionalInt.of(200),
                        OptionalLong.of(0),
                        OptionalDouble.of(0),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty()));
        Endurance answer = EnduranceSimulator.simulate(asked, year).result();
        double offered = answer.sources().solarWh().value()
                + answer.sources().surplusWh().value();
        SolarYieldBrief yields = new SolarYieldBrief(
                At.ROOT,
                PLACE,
                PanelMount.FLAT,
                OptionalDouble.of(200),
                List.of(MonthWish.of(6)),
                OptionalDouble.empty(),
                Optional.empty());
        double perDay = SolarYieldSizer.size(yields, year)
                .result()
                .months()
                .get(0)
                .yieldWhPerDay()
                .value();
        assertThat(offered).isCloseTo(7 * perDay, within(0.02 * 7 * perDay));
    }

    // Common practice, no source: a lithium bank takes no charge below 0 C. The month's mean is above it, its first
    // third is not; and days that are drawn about the mean have cold spells of their own.
    @Test
    void aColdSpellOfATypicalYearKeepsChargeOut() {
        TypicalYear year = EpwReader.read(SyntheticYear.lines(0.5, false).stream()
                .map(line -> line.matches("2001,6,([1-9]|10),.*")
                        ? line.replaceFirst("[?]9[?]9,[0-9.]+", "?9?9,-8.0")
                        : line)
                .iterator());
        Stay stay = Stay.of(PLACE, 6, 3);
        assertThat(coldHours(EnduranceSimulator.simulate(thirsty(stay), year))).isGreaterThan(1);
        Ambient asTheMonth = TypicalMonth.of(year, 6).ambient(At.ROOT);
        assertThat(asTheMonth.meanC()).isPositive();
        assertThat(coldHours(EnduranceSimulator.simulate(thirsty(stay.at(asTheMonth)))))
                .isPositive();
        assertThat(coldHours(EnduranceSimulator.simulate(thirsty(stay.at(new Ambient(25, 5))))))
                .isZero();
        assertThat(coldHours(EnduranceSimulator.simulate(thirsty(stay.at(new Ambient(30, 5))), year)))
                .isZero();
        assertThat(coldHours(EnduranceSimulator.simulate(thirsty(stay).in(BankPlacement.warmerBy(20)), year)))
                .isZero();
    }

    // Source: Bendt and others 1981 against daily sequences of 5,448 station-months (NREL TMY3, SWERA): unscaled, the
    // distribution makes single days and spells of days darker than they are.
    @Test
    void daysAsBendtPublishedThemRunFlatMoreOften() {
        EnduranceBrief plain = brief(1200, 180, Stay.of(Place.of(40, 5), 4, 7), Load.dc("all", 20, 24));
        double place = chance(plain.in(sampling(OptionalDouble.empty(), DaySpread.PLACE)));
        double bendt = chance(plain.in(sampling(OptionalDouble.empty(), DaySpread.BENDT)));

        assertThat(place).isPositive();
        assertThat(bendt).isGreaterThan(1.5 * place);
    }

    // Months that differ more from each other have more of the changeable ones, and those run a vehicle flat.
    @Test
    void aSmallChanceGrowsWithTheUncertaintyOfTheSpread() {
        EnduranceBrief plain = brief(1200, 180, Stay.of(Place.of(40, 5), 4, 7), Load.dc("all", 20, 24));
        double known = chance(plain.in(sampling(OptionalDouble.of(0), DaySpread.PLACE)));
        double unknown = chance(plain.in(sampling(OptionalDouble.of(0.4), DaySpread.PLACE)));

        assertThat(known).isLessThan(0.05);
        assertThat(unknown).isGreaterThan(known);
    }

    private static Sampling sampling(OptionalDouble spreadUncertainty, DaySpread daySpread) {
        return new Sampling(
                At.ROOT,
                OptionalInt.of(2000),
                OptionalLong.of(0),
                OptionalDouble.empty(),
                spreadUncertainty,
                Optional.of(daySpread),
                Optional.empty());
    }

    // The same file read both ways: its steady sky has no dull day, the days that are drawn about its mean have.
    @Test
    void drawsDaysAboutTheMeansOfATypicalYear() {
        TypicalYear year = EpwReader.read(SyntheticYear.lines(0.5, false).iterator());
        EnduranceBrief brief = brief(600, 120, Stay.of(PLACE, 6, 7), Load.dc("all", 15, 24));
        EnduranceBrief means = brief.in(brief.sampling().reading(YearReading.MEANS));
        assertThat(EnduranceSimulator.simulate(means, year)
                        .result()
                        .chance()
                        .value()
                        .value())
                .isGreaterThan(EnduranceSimulator.simulate(brief, year)
                        .result()
                        .chance()
                        .value()
                        .value());
    }

    private static EnduranceBrief thirsty(Stay stay) {
        return brief(1000, 200, stay, Load.dc("all", 20, 24));
    }

    private static double coldHours(Answer<Endurance> answer) {
        return answer.result().cycles().coldLockoutHours().value();
    }
}
