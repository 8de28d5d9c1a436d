package wayside.sizing.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * The chain of days against real ones. The stations are what is independent, so a band is 3.5 standard errors of their mean: a
 * false alarm in 2,000, were the model exact.
 */
class TemperatureChainTest {
    private static final String FILE = "/wayside/sizing/ledger/daily-temperature-tmy3.csv";
    private static final int MONTHS = 12;

    // Source: daily means of 60 stations, NREL TMY3 (2008): correlation of a day with the next within a month, about
    // the
    // month's own mean.
    @Test
    void aDayResemblesTheOneBeforeAsRealDaysDo() {
        List<List<Double>> real = months();
        double[] ofStations = byStation(real, month -> lagged(month));
        double drawn = mean(byStation(drawn(real), month -> lagged(month)));
        assertThat(drawn).isCloseTo(mean(ofStations), within(3.5 * error(ofStations)));
    }

    // Source: the same: standard deviation of the mean of 3 and of 5 successive days over that of a day.
    @Test
    void coldSpellsAreAsLongAsRealOnes() {
        List<List<Double>> real = months();
        for (int days : new int[] {3, 5}) {
            double[] ofStations = byStation(real, month -> spell(month, days));
            double drawn = mean(byStation(drawn(real), month -> spell(month, days)));
            // 0.015: what the fit over 1,207 stations leaves, in which colder places are a shade more persistent.
            assertThat(drawn).isCloseTo(mean(ofStations), within(3.5 * error(ofStations) + 0.015));
        }
    }

    // Fact of the chain: each day is standard normal; 4 standard errors.
    @Test
    void aDayIsStandardNormal() {
        double sum = 0;
        double squares = 0;
        int runs = 20_000;
        for (int run = 0; run < runs; run++) {
            TemperatureChain chain = new TemperatureChain(RunRandom.ofAir(9, run));
            chain.next();
            double y = chain.next();
            sum += y;
            squares += y * y;
        }
        assertThat(sum / runs).isCloseTo(0, within(4 / Math.sqrt(runs)));
        assertThat(squares / runs).isCloseTo(1, within(4 * Math.sqrt(2.0 / runs)));
    }

    // Light and air are drawn apart: whether a day is warm says nothing of whether it is clear.
    @Test
    void warmthSaysNothingOfClearness() {
        double products = 0;
        int runs = 20_000;
        for (int run = 0; run < runs; run++) {
            double clear = Normal.quantile(new DayChain(new RunRandom(9, run)).next());
            products += clear * new TemperatureChain(RunRandom.ofAir(9, run)).next();
        }
        assertThat(products / runs).isCloseTo(0, within(4 / Math.sqrt(runs)));
    }

    private interface Figure {
        double of(double[] deviations);
    }

    private static double[] byStation(List<List<Double>> months, Figure figure) {
        double[] result = new double[months.size() / MONTHS];
        for (int i = 0; i < months.size(); i++) {
            result[i / MONTHS] += figure.of(deviations(months.get(i))) / MONTHS;
        }
        return result;
    }

    private static double[] deviations(List<Double> days) {
        double mean = days.stream().mapToDouble(d -> d).average().orElseThrow();
        return days.stream().mapToDouble(d -> d - mean).toArray();
    }

    private static double lagged(double[] days) {
        double products = 0;
        double squares = 0;
        for (int day = 0; day < days.length; day++) {
            squares += days[day] * days[day];
            products += day > 0 ? days[day] * days[day - 1] : 0;
        }
        return products / squares;
    }

    private static double spell(double[] days, int length) {
        double squares = 0;
        int spells = days.length - length + 1;
        for (int start = 0; start < spells; start++) {
            double sum = 0;
            for (int day = start; day < start + length; day++) {
                sum += days[day] / length;
            }
            squares += sum * sum;
        }
        double ofDays = 0;
        for (double day : days) {
            ofDays += day * day;
        }
        return Math.sqrt(squares / spells / (ofDays / days.length));
    }

    private static List<List<Double>> drawn(List<List<Double>> real) {
        List<List<Double>> months = new ArrayList<>();
        for (int i = 0; i < real.size(); i++) {
            TemperatureChain chain = new TemperatureChain(RunRandom.ofAir(5, i));
            List<Double> days = new ArrayList<>();
            for (int day = 0; day < real.get(i).size(); day++) {
                days.add(chain.next());
            }
            months.add(days);
        }
        return months;
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value / values.length;
        }
        return sum;
    }

    /** Of the difference to a drawn mean that scatters as much. */
    private static double error(double[] values) {
        double mean = mean(values);
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return Math.sqrt(2 * squares / (values.length - 1) / values.length);
    }

    private static List<List<Double>> months() {
        try (InputStream stream = Objects.requireNonNull(TemperatureChainTest.class.getResourceAsStream(FILE));
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .map(line -> List.of(line.split(",", -1)))
                    .filter(cells -> cells.size() > 6 && cells.get(5).equals("mean"))
                    .map(cells -> cells.subList(7, cells.size()).stream()
                            .filter(cell -> !cell.isEmpty())
                            .map(Double::valueOf)
                            .toList())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
