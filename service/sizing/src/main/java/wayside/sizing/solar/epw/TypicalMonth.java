package wayside.sizing.solar.epw;

import java.util.OptionalDouble;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Sky;
import wayside.sizing.solar.plane.Extraterrestrial;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.solar.plane.SunGeometry;
import wayside.sizing.trace.Unit;

/**
 * Means of a month of a typical year.
 *
 * @param irradiationKwhM2 of the mean day on the horizontal [kWh/m2]
 * @param clearness of the month: its irradiation over that above the atmosphere; 0 without sun
 * @param clearnessSpread standard deviation of the daily clearness
 * @param meanC air temperature [C]
 * @param dailySwingK mean difference between a day's warmest and coldest hour [K]
 */
public record TypicalMonth(
        double irradiationKwhM2, double clearness, double clearnessSpread, double meanC, double dailySwingK) {
    /**
     * The means of a month.
     *
     * @param month 1 to 12
     */
    public static TypicalMonth of(TypicalYear year, int month) {
        int days = SolarCalendar.daysIn(month);
        int first = SolarCalendar.dayOfYear(month, 1);
        Sums sums = new Sums();
        for (int n = first; n < first + days; n++) {
            sums.addDay(year, n);
        }
        return sums.means(days);
    }

    /** As a request would state it there. */
    public Sky sky(At at) {
        return new Sky.DailyIrradiation(at, irradiationKwhM2);
    }

    /** As a request would state it there. */
    public Ambient ambient(At at) {
        return new Ambient(at, meanC, OptionalDouble.of(dailySwingK));
    }

    private static final class Sums {
        private double irradiation;
        private double extraterrestrial;
        private double clearness;
        private double clearnessSquared;
        private double temperature;
        private double swing;

        void addDay(TypicalYear year, int n) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            double sun = 0;
            for (int hour = Unit.HOURS_PER_DAY * (n - 1); hour < Unit.HOURS_PER_DAY * n; hour++) {
                sun += year.globalWm2(hour) / 1000;
                temperature += year.airC(hour);
                low = Math.min(low, year.airC(hour));
                high = Math.max(high, year.airC(hour));
            }
            double top = Extraterrestrial.dailyKwhM2(
                    Math.toRadians(year.place().latitude()),
                    SunGeometry.spencerDeclination(n),
                    Extraterrestrial.spencerNormalWm2(n));
            double k = top > 0 ? sun / top : 0;
            irradiation += sun;
            extraterrestrial += top;
            clearness += k;
            clearnessSquared += k * k;
            swing += high - low;
        }

        TypicalMonth means(int days) {
            double mean = clearness / days;
            return new TypicalMonth(
                    irradiation / days,
                    extraterrestrial > 0 ? irradiation / extraterrestrial : 0,
                    Math.sqrt(Math.max(0, clearnessSquared / days - mean * mean)),
                    temperature / (Unit.HOURS_PER_DAY * days),
                    swing / days);
        }
    }
}
