package wayside.server.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wayside.server.binding.RequestReader;
import wayside.server.operation.circuits.CircuitsRequest;
import wayside.server.operation.endurance.EnduranceRequest;
import wayside.server.operation.energybudget.EnergyBudgetRequest;
import wayside.server.operation.recommendation.RecommendationRequest;
import wayside.server.operation.solaryield.MostSunshine;

/** What a request is likely to take, known from its size. */
class PriceTest {
    private static final String TRIP =
            "'trip': {'stays': [{'place': {'latitude': 46, 'longitude': 8}, 'month': 6, 'nights': %d}]}";
    private static final String LOADS = "'loads': [{'name': 'fan', 'powerW': 20, 'hoursPerDay': 5}]";

    @Test
    void aRecommendationByDaysIsCheapAndOneByChanceIsNot() {
        assertThat(recommendation("", 10)).isLessThan(Price.MOST_LIGHT);
        assertThat(recommendation(", 'target': {'chanceOfRunningFlat': 0.03}", 10))
                .isGreaterThan(Price.MOST_LIGHT);
    }

    @Test
    void aLongTripInManyRunsCostsMore() {
        assertThat(endurance(2000, 10)).isLessThan(endurance(20_000, 10)).isLessThan(endurance(2000, 100));
    }

    // The contract's own limits: 200 loads, 60 stays, 366 nights, 5000 runs, 20 million simulated hours.
    @Test
    void theDearestThatTheContractTakesIsWithinItsBound() {
        String loads = listed(200, "{'name': 'load %d', 'powerW': 5, 'hoursPerDay': 3}");
        String stays = listed(60, "{'place': {'latitude': 46, 'longitude': 8}, 'month': 6, 'nights': 6}");
        String common = "{'loads': [" + loads + "], 'trip': {'stays': [" + stays + "]}, ";
        double byChance = Price.of(
                read(common + "'target': {'chanceOfRunningFlat': 0.03}, 'runs': 5000}", RecommendationRequest.class));
        double endurance = Price.of(read(
                common + "'system': {'busVoltageV': 12, 'chemistry': 'lfp', 'nominalEnergyWh': 2000}, 'runs': 2300}",
                EnduranceRequest.class));
        assertThat(byChance).isBetween(0.8 * bound("recommendation"), 1.0 * bound("recommendation"));
        assertThat(endurance).isBetween(0.8 * bound("endurance"), 1.0 * bound("endurance"));
        assertThat(Price.of(read("{'loads': [" + loads + "]}", EnergyBudgetRequest.class)))
                .isLessThanOrEqualTo(bound("energy-budget"));
        String circuits = listed(200, "{'name': 'circuit %d', 'currentA': 5, 'lengthM': 3, 'voltageV': 12}");
        assertThat(Price.of(read("{'circuits': [" + circuits + "]}", CircuitsRequest.class)))
                .isLessThanOrEqualTo(bound("circuits"));
    }

    private static int bound(String operation) {
        return Operations.standard().endpoints().stream()
                .filter(endpoint -> endpoint.id().equals(operation))
                .findFirst()
                .orElseThrow()
                .mostPriceMs();
    }

    private static String listed(int times, String item) {
        return IntStream.range(0, times).mapToObj(item::formatted).collect(Collectors.joining(", "));
    }

    private static double recommendation(String more, int nights) {
        return Price.of(read("{" + LOADS + ", " + TRIP.formatted(nights) + more + "}", RecommendationRequest.class));
    }

    private static double endurance(int runs, int nights) {
        String system = "'system': {'busVoltageV': 12, 'chemistry': 'lfp', 'nominalEnergyWh': 2000}";
        return Price.of(read(
                "{" + LOADS + ", " + TRIP.formatted(nights) + ", " + system + ", 'runs': " + runs + "}",
                EnduranceRequest.class));
    }

    private static <Q extends Record> Q read(String text, Class<Q> type) {
        return new RequestReader(MostSunshine::addTo)
                .read(text.replace('\'', '"').getBytes(java.nio.charset.StandardCharsets.UTF_8), type);
    }
}
