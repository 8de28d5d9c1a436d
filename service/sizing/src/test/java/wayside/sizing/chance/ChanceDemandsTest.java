package wayside.sizing.chance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import wayside.sizing.SystemSizer;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.Sky;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Target;
import wayside.sizing.brief.Tier;
import wayside.sizing.brief.Trip;
import wayside.sizing.brief.Window;
import wayside.sizing.recommendation.Recommendation;
import wayside.sizing.trace.Derived;

/** What is asked for beside a chance holds in the answer, and asking for more never makes a system lighter. */
class ChanceDemandsTest {
    private static final double SLACK_KG = 1e-9;

    private static Target target(
            OptionalDouble days, OptionalDouble chance, OptionalDouble comfort, Optional<Boolean> balance) {
        return new Target(
                At.ROOT.field("target"),
                days,
                chance,
                Optional.empty(),
                comfort,
                balance,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static Target chance(double chance) {
        return target(OptionalDouble.empty(), OptionalDouble.of(chance), OptionalDouble.empty(), Optional.empty());
    }

    private static Target serving(double share) {
        return target(OptionalDouble.empty(), OptionalDouble.of(0.1), OptionalDouble.of(share), Optional.empty());
    }

    private static Recommendation sized(Target target, Load... loads) {
        Stay stay = Stay.of(Place.of(44, 5), 9, 5)
                .under(new Sky.Clearness(0.5))
                .at(new Ambient(18, 8))
                .driving(0.5);
        return SystemSizer.size(new SystemBrief(
                        At.ROOT,
                        List.of(loads),
                        Trip.of(stay),
                        SystemWishes.open(At.ROOT.field("system")),
                        target,
                        Sampling.of(400, 3)))
                .result();
    }

    private static Load fridge() {
        return Load.dc("fridge", 45, 24).withDuty(0.4);
    }

    private static Load fan() {
        return Load.dc("fan", 60, 5).of(Tier.COMFORT).during(new Window(18 * 60, 23 * 60));
    }

    private static Borne borne(Recommendation recommendation) {
        return recommendation.byChance().orElseThrow().borne();
    }

    private static double massKg(Recommendation recommendation) {
        return recommendation.system().mass().massKg().value();
    }

    @Test
    void comfortLoadsGetAsMuchAsIsAskedFor() {
        double lighterKg = 0;
        for (double share : new double[] {0, 0.5, 0.9, 0.99}) {
            Recommendation found = sized(serving(share), fridge(), fan());
            assertThat(found.feasible()).isTrue();
            assertThat(borne(found).served().comfortShare().orElseThrow().value())
                    .isGreaterThanOrEqualTo(share);
            assertThat(massKg(found)).isGreaterThanOrEqualTo(lighterKg - SLACK_KG);
            lighterKg = massKg(found);
        }
    }

    @Test
    void nineTenthsAreServedWhereNothingIsSaid() {
        Recommendation found = sized(chance(0.1), fridge(), fan());
        assertThat(found.byChance()
                        .orElseThrow()
                        .demands()
                        .comfortShare()
                        .orElseThrow()
                        .value())
                .isEqualTo(0.9);
        assertThat(sized(chance(0.1), fridge())
                        .byChance()
                        .orElseThrow()
                        .demands()
                        .comfortShare())
                .isEmpty();
    }

    @Test
    void aVitalLoadNeverGoesShort() {
        Load breathing = Load.dc("breathing aid", 30, 8);
        Recommendation bold = sized(chance(0.2), fridge(), breathing);
        Recommendation vital = sized(chance(0.2), fridge(), breathing.of(Tier.VITAL));
        assertThat(borne(bold).chance().value().value()).isPositive();
        assertThat(borne(vital).chance().value().value()).isZero();
        assertThat(borne(vital).vitalReserveHours().orElseThrow().value()).isPositive();
        assertThat(borne(bold).vitalReserveHours()).isEmpty();
        assertThat(massKg(vital)).isGreaterThanOrEqualTo(massKg(bold));
    }

    @Test
    void aDayThatMustBalanceDoes() {
        Recommendation drained = sized(chance(0.1), fridge(), fan());
        Recommendation even = sized(
                target(OptionalDouble.empty(), OptionalDouble.of(0.1), OptionalDouble.empty(), Optional.of(true)),
                fridge(),
                fan());
        assertThat(borne(drained).balance().isNegative()).isTrue();
        assertThat(borne(even).balance().isNegative()).isFalse();
        assertThat(even.feasible()).isTrue();
    }

    @Test
    void daysAndChanceHoldTogether() {
        Recommendation both = sized(
                target(OptionalDouble.of(3), OptionalDouble.of(0.1), OptionalDouble.empty(), Optional.empty()),
                fridge(),
                fan());
        Recommendation byDays = sized(
                target(OptionalDouble.of(3), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty()),
                fridge(),
                fan());
        assertThat(both.feasible()).isTrue();
        assertThat(borne(both).chance().value().value()).isLessThanOrEqualTo(0.1);
        assertThat(both.system().battery().bank().nominalEnergyWh().value())
                .isGreaterThanOrEqualTo(byDays.system().battery().neededWh().value());
        assertThat(both.system().array().orElseThrow().powerW().value())
                .isGreaterThanOrEqualTo(
                        byDays.system().arrayNeed().worst().arrayW().value());
    }

    // What is used of a bank is told once for its age and once as it was bought, in the same runs.
    @Test
    void aNewBankIsSurerThanAnOldOne() {
        Borne borne = borne(sized(chance(0.2), fridge()));
        Derived old = borne.chance().value();
        assertThat(borne.whenNew().value()).isLessThanOrEqualTo(old.value());
    }
}
