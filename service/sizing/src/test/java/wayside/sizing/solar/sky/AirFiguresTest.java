package wayside.sizing.solar.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sky;

/** A month's air: its mean, how days differ, how far a day swings. */
class AirFiguresTest {
    // Source: the maker of the tables' own bilinear reading of them at these places, to the printed digits (a spread to
    // a
    // hundredth, the rest to a tenth).
    @ParameterizedTest
    @CsvSource({
        "40.2, -100.58, 786, 1, -1.9, 6.43, 7.8",
        "40.2, -100.58, 786, 7, 25.5, 3.21, 12.0",
        "46.5, 8.2, 600, 1, 1.1, 3.77, 3.7",
        "46.5, 8.2, 600, 7, 19.4, 2.86, 8.7",
        "60.2, 24.9, 10, 1, -4.8, 5.40, 1.6",
        "60.2, 24.9, 10, 7, 17.6, 2.73, 7.7",
        "-37, 145, 100, 1, 21.6, 3.27, 9.8",
        "-37, 145, 100, 7, 9.1, 2.46, 4.9",
        "36.7, -4.4, 10, 1, 11.5, 3.09, 7.4",
        "36.7, -4.4, 10, 7, 27.2, 2.39, 13.6",
    })
    void readsTheTablesAsTheirMakerDoes(
            double latitude,
            double longitude,
            double elevationM,
            int month,
            double meanC,
            double spreadK,
            double swingK) {
        SkyMonth sky = sky(latitude, longitude, elevationM, month, Optional.empty(), Optional.empty());
        assertThat(sky.meanC().value()).isCloseTo(meanC, within(0.051));
        assertThat(sky.daySpreadK().value()).isCloseTo(spreadK, within(0.0051));
        assertThat(sky.dailySwingK().value()).isCloseTo(swingK, within(0.051));
    }

    // Source: the same, off the land cells; what an almanac gives there is within 3 K, from memory.
    @ParameterizedTest
    @CsvSource({
        "38.5, -28, 0, 1, 15, 7, 21", // mid-Atlantic islands
        "32.3, -64.8, 0, 1, 18, 7, 26",
        "-44, -176.5, 0, 1, 15, 7, 9",
        "82.5, -62.3, 30, 1, -30, 7, 3",
        "-77.85, 166.7, NaN, 1, -4, 7, -30", // at the height of the cells
        "-90, 0, 2835, 12, -24, 7, -56",
        "19.7, -155.5, 2800, 1, 9, 7, 12",
        "-78.46, 106.84, 3488, 1, -29, 7, -61",
    })
    void offTheLandTheAirIsThatOfTheSeaAtThePlacesHeight(
            double latitude,
            double longitude,
            double elevationM,
            int first,
            double firstC,
            int second,
            double secondC) {
        SkyMonth one = sky(latitude, longitude, elevationM, first, Optional.empty(), Optional.empty());
        SkyMonth other = sky(latitude, longitude, elevationM, second, Optional.empty(), Optional.empty());
        assertThat(one.meanC().value()).isCloseTo(firstC, within(0.6));
        assertThat(other.meanC().value()).isCloseTo(secondC, within(0.6));
        assertThat(one.daySpreadK().value()).isBetween(0.5, 7.0);
        assertThat(one.dailySwingK().value()).isBetween(2.0, 4.5);
        assertThat(one.meanErrorK().value()).isEqualTo(1.5);
    }

    @Test
    void theSwingFollowsTheCustomersClearnessAndHisOwnSwingWins() {
        SkyMonth table = sky(40.2, -100.58, 786, 7, Optional.empty(), Optional.empty());
        double clearness = table.clearness().value();
        SkyMonth dull = sky(40.2, -100.58, 786, 7, Optional.of(new Sky.Clearness(clearness / 2)), Optional.empty());
        assertThat(dull.dailySwingK().value()).isCloseTo(table.dailySwingK().value() / 2, within(1e-9));
        SkyMonth own = sky(
                40.2, -100.58, 786, 7, Optional.of(new Sky.Clearness(clearness / 2)), Optional.of(new Ambient(20, 3)));
        assertThat(own.dailySwingK().value()).isEqualTo(3);
        assertThat(own.daySpreadK().value()).isEqualTo(table.daySpreadK().value());
        assertThat(own.meanErrorK().value()).isZero();
        assertThat(table.meanErrorK().value()).isEqualTo(1);
    }

    @Test
    void everyPlaceOfTheEarthHasAir() {
        assertThat(SeaClimate.cells() + WorldClimatology.get().cells()).isEqualTo(61 * 120);
        assertThat(WorldClimatology.get().cellsOfDays())
                .isEqualTo(WorldClimatology.get().cells());
        for (int latitude = -90; latitude <= 90; latitude += 3) {
            for (int longitude = -180; longitude <= 180; longitude += 3) {
                assertThat(WorldClimatology.get().agree(latitude, longitude)).isTrue();
            }
        }
    }

    private static SkyMonth sky(
            double latitude,
            double longitude,
            double elevationM,
            int month,
            Optional<Sky> sky,
            Optional<Ambient> ambient) {
        OptionalDouble elevation = Double.isNaN(elevationM) ? OptionalDouble.empty() : OptionalDouble.of(elevationM);
        Place place = new Place(latitude, longitude, elevation);
        return SkyMonth.of(new MonthAt(At.ROOT, place, month, sky, ambient, "month"));
    }
}
