package wayside.sizing.endurance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What we say happens as often as we say. Every third station; the prediction knows the month's mean only, or its place only.
 */
class ChanceComesTrueTest {
    private static final int RUNS = 500;

    // Source: daily clearness of typical years at 60 stations, NREL TMY3 (2008). The band: four standard errors, the
    // stations being what is independent, and a fifth of the predicted chance plus one in a hundred for what the model
    // can't know.
    @ParameterizedTest
    @CsvSource({"2, true, 0.12", "5, true, 0.12", "5, false, 0.16"})
    void chancesComeTrue(int nights, boolean irradiationGiven, double uncertainty) {
        List<RealMonth> all = RealMonth.all();
        List<RealMonth> some = IntStream.range(0, all.size())
                .filter(i -> i / 12 % 3 == 0)
                .mapToObj(all::get)
                .toList();
        List<ChanceTable.Group> groups =
                new ChanceTable(nights, RUNS, irradiationGiven, uncertainty, true).groups(some);
        for (ChanceTable.Group group : groups) {
            if (group.predicted() > 0.01 && group.predicted() < 0.5) {
                double band = 4 * group.error() + 0.2 * group.predicted() + 0.01;
                assertThat(group.came()).isBetween(group.predicted() - band, group.predicted() + band);
            }
        }
    }
}
