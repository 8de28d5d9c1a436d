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
import wayside.sizing.ledger.ModelWeather;
import wayside.sizing.ledger.ReplayedWeather;
import wayside.sizing.ledger.StaySky;
import wayside.sizing.ledger.Weather;
import wayside.sizing.solar.ArrayModel;
import wayside.sizing.solar.epw.TypicalMonth;
import wayside.sizing.solar.epw.TypicalYear;

/** Makes the weather of a trip on a panel. */
public interface WeatherSource {
    /** Days drawn from what each month is like. */
    WeatherSource DRAWN = new Drawn();

    Weather over(Journey journey, PanelMount panel);

    /**
     * Temperature of a bank at a stay.
     *
     * @param offsetK how much warmer than the air it stands [K]
     * @return [C] by kind of day and hour
     */
    double[][] bankC(JourneyStay stay, double offsetK);

    /** Whether days are drawn, so that it matters how much they differ. */
    boolean drawsDays();

    /** Days that are drawn one after another, the same on any panel; those of a stay are equally warm. */
    record Drawn() implements WeatherSource {
        @Override
        public Weather over(Journey journey, PanelMount panel) {
            List<StaySky> skies = new ArrayList<>();
            for (JourneyStay stay : journey.stays()) {
                double latitude = stay.stay().place().latitude();
                skies.add(new StaySky(
                        latitude,
                        stay.stay().month(),
                        stay.stay().nights(),
                        stay.month().sky(),
                        ArrayModel.of(panel, latitude),
                        journey.uncertainty().scatter(stay.index())));
            }
            return new ModelWeather(skies, journey.sampling().weatherSeed());
        }

        @Override
        public double[][] bankC(JourneyStay stay, double offsetK) {
            return new double[][] {warmed(stay.month().sky().airC(), offsetK)};
        }

        @Override
        public boolean drawsDays() {
            return true;
        }
    }

    /** The hours of a typical year. */
    record Replayed(TypicalYear year) implements WeatherSource {
        @Override
        public Weather over(Journey journey, PanelMount panel) {
            List<ReplayedWeather.Visit> visits =
                    journey.stays().stream().map(stay -> visit(stay.stay())).toList();
            ArrayModel array = ArrayModel.of(panel, year.place().latitude());
            double scatter = journey.uncertainty().ofMeans().get(0).value();
            return new ReplayedWeather(
                    year, array, visits, scatter, journey.sampling().weatherSeed());
        }

        /** The file's own hours, moved to the stay's mean where the request gives another than the file. */
        @Override
        public double[][] bankC(JourneyStay stay, double offsetK) {
            double meanC = stay.month().sky().meanC().value();
            double shiftK =
                    offsetK + meanC - TypicalMonth.of(year, stay.stay().month()).meanC();
            double[][] bankC = visit(stay.stay()).airC(year);
            for (double[] day : bankC) {
                warmed(day, shiftK);
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

    private static double[] warmed(double[] byHourC, double moreK) {
        for (int hour = 0; hour < byHourC.length; hour++) {
            byHourC[hour] += moreK;
        }
        return byHourC;
    }
}
