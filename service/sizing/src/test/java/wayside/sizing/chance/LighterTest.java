package wayside.sizing.chance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Locker;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Roof;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.Sky;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Target;
import wayside.sizing.brief.Trip;
import wayside.sizing.brief.Vehicle;
import wayside.sizing.system.Site;

/** In the same weathers more of anything that helps never makes the lightest system heavier. */
class LighterTest {
    private static final double SLACK_KG = 1e-9;

    private static SystemBrief brief(double drivingHours, double alternatorA, double roofM2, double chance) {
        Stay stay = Stay.of(Place.of(45, 5), 10, 5)
                .under(new Sky.Clearness(0.45))
                .at(new Ambient(12, 8))
                .driving(drivingHours);
        At system = At.ROOT.field("system");
        Vehicle vehicle = new Vehicle(
                system.field("vehicle"),
                OptionalDouble.empty(),
                OptionalDouble.of(alternatorA),
                OptionalDouble.empty());
        Roof roof = new Roof(system.field("roof"), OptionalDouble.of(roofM2), List.of());
        return new SystemBrief(
                At.ROOT,
                List.of(Load.dc("fridge", 50, 24).withDuty(0.4), Load.dc("laptop", 60, 6)),
                Trip.of(stay),
                SystemWishes.open(system).within(roof, Locker.open(system.field("locker")), vehicle),
                Target.chance(chance),
                Sampling.of(300, 5));
    }

    private static double lightestKg(SystemBrief brief) {
        ChanceTrip trip = new ChanceTrip(Site.of(brief));
        ChanceDemands demands =
                ChanceDemands.of(brief, brief.target().chanceOfRunningFlat().orElseThrow());
        return new ChanceCurve(trip, demands)
                .pairs(pair -> ChancePick.point(trip, pair).massKg()).stream()
                        .mapToDouble(pair -> ChancePick.point(trip, pair).massKg())
                        .min()
                        .orElse(Double.POSITIVE_INFINITY);
    }

    private static void neverHeavier(DoubleFunction<SystemBrief> brief, double... rising) {
        double first = lightestKg(brief.apply(rising[0]));
        double before = first;
        for (double value : rising) {
            double kg = lightestKg(brief.apply(value));
            assertThat(kg).as("with %s", value).isLessThanOrEqualTo(before + SLACK_KG);
            before = kg;
        }
        assertThat(before)
                .as("from %s to %s", rising[0], rising[rising.length - 1])
                .isLessThan(first);
    }

    @Test
    void moreDriving() {
        neverHeavier(hours -> brief(hours, 120, 6, 0.05), 0.25, 0.5, 1, 2);
    }

    @Test
    void aLargerAlternator() {
        neverHeavier(amperes -> brief(0.5, amperes, 6, 0.05), 40, 70, 120, 200);
    }

    @Test
    void aLargerRoof() {
        neverHeavier(areaM2 -> brief(0.25, 40, areaM2, 0.05), 0.5, 1, 3, 6);
    }

    @Test
    void aHigherChance() {
        neverHeavier(chance -> brief(0.5, 60, 6, chance), 0.01, 0.05, 0.2, 0.5);
    }
}
