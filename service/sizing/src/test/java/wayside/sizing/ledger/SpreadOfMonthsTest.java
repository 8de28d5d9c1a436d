package wayside.sizing.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Sky;
import wayside.sizing.solar.sky.DailyClearness;
import wayside.sizing.solar.sky.MonthAt;
import wayside.sizing.solar.sky.SkyMonth;

/** Drawn months against real ones: how much a month's own day-to-day spread differs from the one that the table tells. */
class SpreadOfMonthsTest {
    private static final int RUNS = 10;

    // Source: daily clearness of 60 stations x 12 months, NREL TMY3 (2008): standard deviation of the logarithm of a
    // month's
    // spread over the climatology's is 0.31. Without a factor on the spread, thirty days alone give less than half of
    // that.
    @Test
    void differsAsInRealMonths() {
        List<Double> real = new ArrayList<>();
        List<Double> drawn = new ArrayList<>();
        List<Double> drawnWithout = new ArrayList<>();
        int number = 0;
        for (RealMonth month : RealMonth.all()) {
            double told = spread(month);
            real.add(Math.log(deviation(month.days()) / told));
            for (int run = 0; run < RUNS; run++) {
                drawn.add(Math.log(deviation(days(month, told, SkyScatter.SPREAD, number)) / told));
                drawnWithout.add(Math.log(deviation(days(month, told, 0, number)) / told));
                number++;
            }
        }
        assertThat(deviation(drawn)).isCloseTo(deviation(real), within(0.045));
        assertThat(deviation(drawnWithout)).isLessThan(0.6 * deviation(real));
    }

    private static double spread(RealMonth month) {
        return SkyMonth.of(new MonthAt(
                        At.ROOT,
                        month.place(),
                        month.month(),
                        Optional.of(new Sky.Clearness(month.clearness())),
                        Optional.empty(),
                        "month"))
                .clearnessSpread()
                .value();
    }

    private static List<Double> days(RealMonth month, double told, double ofSpread, int number) {
        RunRandom random = new RunRandom(5, number);
        double factor = SkyScatter.of(0, ofSpread).spreadFactor(random.nextNormal());
        DailyClearness clearness = DailyClearness.scaled(month.clearness(), told * factor);
        DayChain chain = new DayChain(random);
        List<Double> days = new ArrayList<>();
        for (int day = 0; day < month.days().size(); day++) {
            days.add(clearness.quantile(chain.next()));
        }
        return days;
    }

    private static double deviation(List<Double> values) {
        double mean = values.stream().mapToDouble(v -> v).average().orElseThrow();
        double squares =
                values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
        return Math.sqrt(squares / (values.size() - 1));
    }
}
