package wayside.sizing.demand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Window;

class WindowTest {
    @Test
    void aWindowMayPassMidnight() {
        Window night = new Window(22 * 60, 6 * 60);
        assertThat(night.minutes()).isEqualTo(8 * 60);
        assertThat(night.minutesInHour(23)).isEqualTo(60);
        assertThat(night.minutesInHour(5)).isEqualTo(60);
        assertThat(night.minutesInHour(6)).isZero();
        assertThat(night.minutesInHour(12)).isZero();
    }

    @Test
    void equalEndsAreTheWholeDay() {
        assertThat(new Window(0, Window.MINUTES_PER_DAY).minutes()).isEqualTo(Window.MINUTES_PER_DAY);
        assertThat(new Window(600, 600).minutes()).isEqualTo(Window.MINUTES_PER_DAY);
    }

    @Test
    void aLoadWithoutWindowsIsSpreadEvenly() {
        assertThat(HourlyShares.of(Load.dc("fridge", 45, 24))).containsOnly(1.0 / 24);
    }

    @Property
    void everyMinuteOfAWindowFallsIntoOneHour(
            @ForAll @IntRange(max = 1439) int from, @ForAll @IntRange(max = 1440) int to) {
        Window window = new Window(from, to);
        int sum = 0;
        for (int hour = 0; hour < 24; hour++) {
            sum += window.minutesInHour(hour);
        }
        assertThat(sum).isEqualTo(window.minutes());
    }

    @Property
    void hourlySharesSumToOne(@ForAll @IntRange(max = 1439) int from, @ForAll @IntRange(max = 1440) int to) {
        double[] shares = HourlyShares.of(Load.dc("lamp", 5, 1).during(new Window(from, to)));
        assertThat(Arrays.stream(shares).sum()).isCloseTo(1, within(1e-12));
    }
}
