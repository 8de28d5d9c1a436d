package wayside.sizing.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import wayside.sizing.Briefs;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.DutyPoint;
import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Trip;
import wayside.sizing.ledger.DayUses;
import wayside.sizing.ledger.LedgerDay;
import wayside.sizing.ledger.RunWeather;
import wayside.sizing.ledger.Weather;

/** A journey that is derived from another equals the one that is made of the changed question. */
class JourneyTest {
    private static final Trip TRIP = Trip.of(
            Stay.of(Place.of(40, -105), 6, 3).at(new Ambient(25, 10)).driving(23.5),
            Stay.of(Place.of(47, 8), 11, 4).at(new Ambient(2, 8)).hookedUp(3));
    private static final Load FRIDGE =
            Load.dc("fridge", 45, 24).withAmbientDuty(new DutyPoint(5, 0.2), new DutyPoint(35, 0.6));

    private static EnduranceBrief brief(Trip trip, Load... loads) {
        return EnduranceBrief.of(
                Briefs.built(12, Chemistry.LFP, 1280, 200, PanelMount.OPEN, 30, 200, OptionalDouble.empty()),
                trip,
                loads);
    }

    private static Journey of(EnduranceBrief brief) {
        return Journey.of(brief, WeatherSource.DRAWN);
    }

    private static final Journey ASKED = of(brief(TRIP, FRIDGE));

    @Test
    void aShorterTripKeepsItsStaysAndTheirWeather() {
        for (int nights : new int[] {2, 5, 9}) {
            Journey anew = of(brief(TRIP.lasting(nights), FRIDGE));
            Journey derived = ASKED.lasting(nights);
            assertThat(derived.trip()).isEqualTo(anew.trip());
            assertThat(figures(derived)).isEqualTo(figures(anew));
            assertThat(run(derived.weather())).usingRecursiveComparison().isEqualTo(run(anew.weather()));
        }
        assertThat(ASKED.lasting(9).stays().get(1).month())
                .isSameAs(ASKED.stays().get(1).month());
    }

    @Test
    void otherLoadsChangeTheDaysOfEveryStayAndNotItsSun() {
        Load lamp = Load.dc("lamp", 12, 5);
        Journey anew = of(brief(TRIP, FRIDGE, lamp));
        Journey derived = ASKED.taking(brief(TRIP, FRIDGE, lamp).energy());
        assertThat(figures(derived)).isEqualTo(figures(anew)).isNotEqualTo(figures(ASKED));
        assertThat(derived.takenWh()).isEqualTo(anew.takenWh()).isGreaterThan(ASKED.takenWh());
        assertThat(derived.stays().get(0).month()).isSameAs(ASKED.stays().get(0).month());
    }

    @Test
    void aWarmerPlaceWarmsTheBankAlone() {
        EnduranceBrief warm = brief(TRIP, FRIDGE).in(BankPlacement.warmerBy(15));
        assertThat(figures(ASKED.in(BankPlacement.warmerBy(15)))).isEqualTo(figures(of(warm)));
        assertThat(figures(of(warm))).isNotEqualTo(figures(ASKED));
    }

    @Test
    void moreDrivingEndsWithTheDay() {
        Journey farther = ASKED.travelling(1, 2);
        assertThat(farther.stays().get(0).drivingHours().value()).isEqualTo(24);
        assertThat(farther.stays().get(1).drivingHours().value()).isEqualTo(1);
        assertThat(farther.stays().get(1).hookupHours().value()).isEqualTo(5);
        assertThat(ASKED.stays().get(1).hookupHours().value()).isEqualTo(3);
    }

    @Test
    void knowsItsHardestStays() {
        assertThat(ASKED.highestDemand().index()).isZero();
        assertThat(ASKED.coldest().index()).isEqualTo(1);
        assertThat(ASKED.hottest().index()).isZero();
        assertThat(ASKED.highestDemandDriving().orElseThrow().index()).isZero();
        assertThat(ASKED.highestDemandHookedUp().orElseThrow().index()).isEqualTo(1);
    }

    @Test
    void theDaysOfTheLedgerTakeWhatTheTripTakes() {
        double taken = 0;
        for (LedgerDay day : ASKED.days(0, 0)) {
            List<DayUses> days = day.uses().days();
            taken += day.nights() * days.get(days.size() / 2).wantedWh();
        }
        assertThat(ASKED.takenWh()).isCloseTo(taken, within(1e-9));
        double fromBudgets = ASKED.stays().stream()
                .mapToDouble(stay ->
                        stay.stay().nights() * stay.budget().dailyTotalWh().value())
                .sum();
        assertThat(ASKED.takenWh()).isCloseTo(fromBudgets, within(1e-9));
    }

    private static List<List<Double>> figures(Journey journey) {
        return journey.stays().stream()
                .map(stay -> List.of(
                        (double) stay.stay().nights(),
                        stay.month().yieldWhPerW().value(),
                        stay.budget().dailyTotalWh().value(),
                        stay.bank().meanC().value(),
                        stay.drivingHours().value(),
                        stay.hookupHours().value(),
                        journey.uncertainty().ofMeans().get(stay.index()).value()))
                .toList();
    }

    private static RunWeather run(Weather weather) {
        RunWeather run = new RunWeather(weather.hours());
        weather.fill(7, run);
        return run;
    }
}
