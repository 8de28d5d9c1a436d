package wayside.sizing.journey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Trip;
import wayside.sizing.brief.YearReading;
import wayside.sizing.ledger.ReplayedWeather;
import wayside.sizing.ledger.Weather;
import wayside.sizing.solar.ArrayModel;
import wayside.sizing.solar.epw.TypicalMonth;
import wayside.sizing.solar.epw.TypicalYear;

/** Makes the weather of a trip on a panel. */
public interface WeatherSource {
    /** Days drawn from what each month is like. */
    WeatherSource DRAWN = (model, panel, seed) -> model.weather(seed, panel);

    Weather over(Journey model, PanelMount panel, long seed);

    /**
     * Temperature of a bank at a stay.
     *
     * @param offsetK how much warmer than the air it stands [K]
     * @return [C] by kind of day and hour
     */
    default double[][] bankC(Journey model, int stay, double offsetK) {
        return new double[][] {model.airC(stay, offsetK)};
    }

    /** Whether days are drawn, so that it matters how much they differ. */
    default boolean drawsDays() {
        return true;
    }

    /** The hours of a typical year. */
    record Replayed(TypicalYear year) implements WeatherSource {
        @Override
        public Weather over(Journey model, PanelMount panel, long seed) {
            List<ReplayedWeather.Visit> visits =
                    model.trip().stays().stream().map(Replayed::visit).toList();
            ArrayModel array = ArrayModel.of(
                    panel, year.place().latitude());
            double scatter = model.uncertainty().ofMeans().get(0).value();
            return new ReplayedWeather(year, array, visits, scatter, seed);
        }

        /** The file's own hours, moved to the stay's mean where the request gives another than the file. */
        @Override
        public double[][] bankC(Journey model, int stay, double offsetK) {
            Stay asked = model.trip().stays().get(stay);
            double meanC = model.months().get(stay).sky().meanC().value();
            double shiftK =
                    offsetK + meanC - TypicalMonth.of(year, asked.month()).meanC();
            double[][] bankC = visit(asked).airC(year);
            for (double[] day : bankC) {
                for (int hour = 0; hour < day.length; hour++) {
                    day[hour] += shiftK;
                }
            }
            return bankC;
        }

        private static ReplayedWeather.Visit visit(Stay stay) {
            return new ReplayedWeather.Visit(stay.month(), stay.nights());
        }

        @Override
        public boolean drawsDays() {
            return false;
        }
    }

    /** Those of a typical year, as the request wants it read. */
    static WeatherSource of(TypicalYear year, Sampling sampling) {
        return switch (sampling.yearReading().orElse(YearReading.HOURS)) {
            case HOURS -> new Replayed(year);
            case MEANS -> DRAWN;
        };
    }

    /** The same question at the place of a typical year, with its months' means. */
    static EnduranceBrief at(TypicalYear year, EnduranceBrief brief) {
        List<Stay> stays = new ArrayList<>();
        for (Stay stay : brief.trip().stays()) {
            TypicalMonth month = TypicalMonth.of(year, stay.month());
            Ambient ambient = stay.ambient().orElse(month.ambient(At.TYPICAL_YEAR));
            stays.add(new Stay(
                    stay.at(),
                    year.place(),
                    stay.month(),
                    stay.nights(),
                    Optional.of(month.sky(At.TYPICAL_YEAR)),
                    Optional.of(ambient),
                    stay.drivingHoursPerDay(),
                    stay.hookupHoursPerDay()));
        }
        return brief.on(new Trip(brief.trip().at(), stays));
    }
}
