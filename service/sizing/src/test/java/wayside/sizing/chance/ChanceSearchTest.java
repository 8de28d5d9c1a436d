package wayside.sizing.chance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import wayside.sizing.Briefs;
import wayside.sizing.EnduranceSimulator;
import wayside.sizing.SystemSizer;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Objective;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.Sky;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Target;
import wayside.sizing.brief.Trip;
import wayside.sizing.recommendation.Recommendation;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Shortfall;

class ChanceSearchTest {
    private static final Sampling RUNS = Sampling.of(400, 0);

    private static SystemBrief brief(Target target) {
        Stay stay = Stay.of(Place.of(42, 5), 5, 7).under(new Sky.Clearness(0.5)).at(new Ambient(18, 8));
        return new SystemBrief(
                At.ROOT,
                List.of(Load.dc("fridge", 45, 24).withDuty(0.5), Load.dc("light", 10, 4)),
                Trip.of(stay),
                SystemWishes.open(At.ROOT.field("system")),
                target,
                RUNS);
    }

    private static ByChance found(Target target) {
        return SystemSizer.size(brief(target)).result().byChance().orElseThrow();
    }

    @Test
    void findsASystemThatIsSureEnough() {
        Answer<Recommendation> answer = SystemSizer.size(brief(Target.chance(0.05)));
        ByChance found = answer.result().byChance().orElseThrow();
        assertThat(answer.result().feasible()).isTrue();
        assertThat(found.borne().chance().value().value()).isLessThanOrEqualTo(0.05);
        assertThat(answer.result().system().battery().bank().nominalEnergyWh().value())
                .isEqualTo(found.pair().nominalEnergyWh().orElseThrow().value());
        assertThat(answer.cautions()).extracting(Caution::code).doesNotContain("growth");
    }

    // The two operations must agree: what was found, simulated as a built system with a worn bank and the chargers that
    // were
    // chosen for it.
    @Test
    void endurancePredictsTheSameChanceForTheSystemThatWasFound() {
        Stay stay =
                Stay.of(Place.of(42, 5), 11, 7).under(new Sky.Clearness(0.4)).driving(0.5);
        SystemBrief brief = new SystemBrief(
                At.ROOT,
                List.of(Load.dc("fridge", 45, 24).withDuty(0.5), Load.dc("light", 10, 4)),
                Trip.of(stay),
                SystemWishes.open(At.ROOT.field("system")),
                Target.chance(0.05),
                RUNS);
        Recommendation found = SystemSizer.size(brief).result();
        SystemFacts facts = SystemFacts.of(found.system());
        EnduranceBrief asked = new EnduranceBrief(
                At.ROOT,
                facts.worn(),
                brief.loads(),
                brief.trip(),
                OptionalDouble.empty(),
                BankPlacement.OPEN,
                OptionalDouble.empty(),
                RUNS);
        assertThat(facts.alternatorA()).isPositive();
        assertThat(EnduranceSimulator.simulate(asked).result().chance().value().value())
                .isEqualTo(
                        found.byChance().orElseThrow().borne().chance().value().value());
    }

    /** What a built system is asked for, read off one that was sized. */
    private record SystemFacts(double busV, double wornWh, double solarW, double alternatorA) {
        static SystemFacts of(SizedSystem system) {
            BatteryBank bank = system.battery().bank();
            return new SystemFacts(
                    bank.busVoltageV().value(),
                    bank.nominalEnergyWh().value()
                            * bank.data().endOfLifeShare().value(),
                    system.array().orElseThrow().powerW().value(),
                    system.chargers()
                            .alternator()
                            .orElseThrow()
                            .chargerCurrentA()
                            .value());
        }

        BuiltSystem worn() {
            return Briefs.built(
                    busV, Chemistry.LFP, wornWh, solarW, PanelMount.OPEN, alternatorA, 0, OptionalDouble.empty());
        }
    }

    // Source: Egido and Lorenzo, Solar Energy Materials and Solar Cells 26 (1992): along a curve of equal reliability a
    // larger array goes with a smaller bank.
    @Test
    void aLargerArrayOnTheCurveNeverNeedsALargerBank() {
        List<CurvePoint> curve = found(Target.chance(0.05)).curve();
        assertThat(curve).hasSizeGreaterThan(3);
        for (int i = 1; i < curve.size(); i++) {
            assertThat(curve.get(i).solarPowerW())
                    .isGreaterThan(curve.get(i - 1).solarPowerW());
            assertThat(curve.get(i).nominalEnergyWh())
                    .isLessThanOrEqualTo(curve.get(i - 1).nominalEnergyWh());
        }
    }

    @Test
    void beingSurerNeverTakesASmallerBankOnTheCurve() {
        List<CurvePoint> bold = found(Target.chance(0.2)).curve();
        List<CurvePoint> careful = found(Target.chance(0.02)).curve();
        for (int i = 0; i < bold.size(); i++) {
            assertThat(careful.get(i).nominalEnergyWh())
                    .isGreaterThanOrEqualTo(bold.get(i).nominalEnergyWh());
        }
    }

    @Test
    void choosesByWhatIsAsked() {
        Target target = Target.chance(0.05);
        CurvePoint light = chosen(found(target.by(Objective.MASS)));
        CurvePoint small = chosen(found(target.by(Objective.VOLUME)));
        assertThat(light.massKg()).isLessThanOrEqualTo(small.massKg());
        assertThat(small.volumeL()).isLessThanOrEqualTo(light.volumeL());
    }

    private static CurvePoint chosen(ByChance found) {
        double arrayW = found.pair().solarPowerW().orElseThrow().value();
        return found.curve().stream()
                .filter(point -> point.solarPowerW() == arrayW)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsChosenLiesOnTheCurve() {
        for (double chance : new double[] {0.02, 0.05, 0.2}) {
            ByChance found = found(Target.chance(chance));
            assertThat(chosen(found).nominalEnergyWh())
                    .isEqualTo(found.pair().nominalEnergyWh().orElseThrow().value());
            assertThat(found.curve()).allSatisfy(point -> assertThat(1.02 * point.massKg())
                    .isGreaterThanOrEqualTo(chosen(found).massKg()));
        }
    }

    @Test
    void neverInventsAPrice() {
        Target byPrice = Target.chance(0.05).by(Objective.PRICE);
        assertThat(found(byPrice).objective()).isEqualTo(Objective.MASS);
    }

    @Test
    void saysWhenWhatIsGivenIsNotSureEnough() {
        SystemBrief open = brief(Target.chance(0.05));
        SystemWishes small = Briefs.owning(300, 50);
        Recommendation recommendation = SystemSizer.size(
                        new SystemBrief(At.ROOT, open.loads(), open.trip(), small, open.target(), RUNS))
                .result();
        assertThat(recommendation.shortfalls()).extracting(Shortfall::code).contains("chance-too-high");
    }

    // Fact of astronomy: at 69.6 N the sun stays below the horizon all December.
    @Test
    void buysNoPanelForThePolarNight() {
        SystemBrief brief = new SystemBrief(
                At.ROOT,
                List.of(Load.dc("fridge", 45, 6)),
                Trip.of(Stay.of(Place.of(69.6, 18.9), 12, 3).at(new Ambient(5, 4))),
                SystemWishes.open(At.ROOT.field("system")),
                Target.chance(0.05),
                RUNS);
        Recommendation recommendation = SystemSizer.size(brief).result();
        assertThat(recommendation.system().array()).isEmpty();
        assertThat(recommendation.byChance().orElseThrow().advice()).satisfies(advice -> {
            double chance = ((Parameter.Figure) advice.find("chance").orElseThrow())
                    .quantity()
                    .value();
            assertThat(chance).isLessThanOrEqualTo(0.05);
        });
    }

    @Test
    void withoutAnAcceptedChanceNothingIsDrawn() {
        assertThat(SystemSizer.size(brief(Target.OPEN)).result().byChance()).isEmpty();
    }
}
