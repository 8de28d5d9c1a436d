package wayside.server.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wayside.server.api.EnduranceRequest;
import wayside.server.api.RecommendationRequest;
import wayside.server.mapping.RequestReader;

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
        return new RequestReader()
                .read(text.replace('\'', '"').getBytes(java.nio.charset.StandardCharsets.UTF_8), type);
    }
}
