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
import wayside.sizing.solar.array.ArrayModel;
import wayside.sizing.solar.epw.TypicalMonth;
import wayside.sizing.solar.epw.TypicalYear;

/** Makes the weather of a trip on a panel. */
public interface WeatherSource {
    /** Days drawn from what each month is like. */
    WeatherSource DRAWN = new Drawn();

    Weather over(Journey journey, PanelMount panel);

    /** Whether days are drawn, so that it matters how much they differ. */
    boolean drawsDays();

    /** Days that are drawn one after another, the same on any panel. */
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
            return new ModelWeather(
                    skies,
                    journey.place().lagHours().value(),
                    journey.sampling().weatherSeed());
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
                    journey.stays().stream().map(this::visit).toList();
            ArrayModel array = ArrayModel.of(panel, year.place().latitude());
            double scatter = journey.uncertainty().ofMeans().get(0).value();
            return new ReplayedWeather(
                    year,
                    array,
                    visits,
                    journey.place().lagHours().value(),
                    scatter,
                    journey.sampling().weatherSeed());
        }

        /** The file's own air is moved to the stay's mean where the request gives another than the file. */
        private ReplayedWeather.Visit visit(JourneyStay stay) {
            double meanC = stay.month().sky().meanC().value();
            double fileC = TypicalMonth.of(year, stay.stay().month()).meanC();
            return new ReplayedWeather.Visit(stay.stay().month(), stay.stay().nights(), meanC - fileC);
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
