package wayside.sizing.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import wayside.sizing.Briefs;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Trip;
import wayside.sizing.storage.BankPlace;

class BankWarmthTest {
    private static JourneyStay stay(BankPlacement placement, double meanC) {
        Stay january = Stay.of(Place.of(46, 8), 1, 5).at(new Ambient(meanC, 10));
        EnduranceBrief brief = EnduranceBrief.of(
                        Briefs.built(12, Chemistry.LFP, 1000, 0, PanelMount.OPEN, 0, 0, OptionalDouble.empty()),
                        Trip.of(january),
                        Load.dc("lamp", 10, 5))
                .in(placement);
        return Journey.of(brief, WeatherSource.DRAWN).stays().get(0);
    }

    // Source: physics textbooks, first-order system: a wave of 24 h is damped to 1 / sqrt(1 + (2 pi 8 / 24)^2) = 0.431
    // and
    // comes atan(2 pi 8 / 24) / (2 pi / 24) = 4.3 h late; the air is warmest at 15 h.
    @Test
    void theMeanDayOfABankIsTheAirsDampedAndLate() {
        double[] bankC = stay(BankPlacement.OPEN, -3).bank().dayC();
        double most = DoubleStream.of(bankC).max().orElseThrow();
        assertThat(most - DoubleStream.of(bankC).min().orElseThrow()).isCloseTo(0.431 * 10, within(0.05));
        assertThat(bankC[19]).isEqualTo(most);
        assertThat(DoubleStream.of(bankC).average().orElseThrow()).isCloseTo(-3, within(1e-9));
    }

    @Test
    void aBankWithoutALagIsAsWarmAsTheAir() {
        JourneyStay stay = stay(BankPlacement.OPEN.lagging(0), -3);
        double[] airC = stay.month().sky().airC();
        double[] bankC = stay.bank().dayC();
        for (int hour = 0; hour < bankC.length; hour++) {
            assertThat(bankC[hour]).isCloseTo(airC[hour], within(1e-9));
        }
    }

    @Test
    void aHeaterIsPaidForInTheDaysBudget() {
        JourneyStay cold = stay(BankPlacement.OPEN, -3);
        JourneyStay heated = stay(BankPlacement.OPEN.heated(40), -3);
        double moreWh = heated.budget().dailyTotalWh().value()
                - cold.budget().dailyTotalWh().value();
        assertThat(moreWh).isPositive();
        assertThat(heated.bank().heaterWh().orElseThrow().value()).isCloseTo(moreWh, within(1e-9));
        assertThat(DoubleStream.of(heated.bank().dayC()).min().orElseThrow()).isEqualTo(2);
        assertThat(heated.bank().meanC().value()).isEqualTo(2);
        double hourly = heated.budget().hourlyW().stream().mapToDouble(w -> w).sum();
        assertThat(hourly).isCloseTo(heated.budget().dailyTotalWh().value(), within(1e-9));
    }

    @Test
    void nothingIsHeatedInJulyAir() {
        assertThat(stay(BankPlacement.OPEN.heated(40), 25)
                        .bank()
                        .heaterWh()
                        .orElseThrow()
                        .value())
                .isZero();
    }

    @Test
    void theHeaterThatIsMissingIsTold() {
        BankWarmth cold = stay(BankPlacement.OPEN, -3).bank();
        assertThat(cold.missingHeater()).isPresent();
        BankPlace mended = BankPlace.of(cold.missingHeater().orElseThrow().placement());
        assertThat(mended.heating().orElseThrow().warmedC(cold.coldDayC().value()))
                .isEqualTo(2);
    }
}
