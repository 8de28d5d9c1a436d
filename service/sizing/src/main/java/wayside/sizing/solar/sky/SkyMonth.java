package wayside.sizing.solar.sky;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derived;

/**
 * How sunny and how warm a month is, with where each figure comes from.
 *
 * @param basis where the sunshine comes from
 * @param extraterrestrialKwhM2 H0 of the month's mean day [kWh/m2]; 0 in polar night
 * @param clearness share of H0 that reaches the ground; 0 without sun
 * @param clearnessSpread standard deviation of the daily clearness
 * @param horizontalKwhM2 irradiation of the mean day [kWh/m2]
 * @param lowKwhM2 what one month in ten falls short of, as far as the source's own error is known [kWh/m2]
 * @param highKwhM2 what one month in ten exceeds [kWh/m2]
 * @param meanC air temperature [C]
 * @param dailySwingK between the day's lowest and highest, as a cosine [K]
 * @param daySpreadK standard deviation of a day's mean temperature about the month's [K]
 * @param meanErrorK of the month's mean, beside the year's own scatter [K]
 * @param choices the sources, when they are ours
 * @param doubts when no sky could be as the request says
 * @param remote when the air is that of the sea or the ice round about
 */
public record SkyMonth(
        SkyBasis basis,
        Derived extraterrestrialKwhM2,
        Derived clearness,
        Derived clearnessSpread,
        Derived horizontalKwhM2,
        Derived lowKwhM2,
        Derived highKwhM2,
        Derived meanC,
        Derived dailySwingK,
        Derived daySpreadK,
        Derived meanErrorK,
        List<Assumption> choices,
        List<SkyDoubt> doubts,
        Optional<RemoteAir> remote) {
    public SkyMonth {
        choices = List.copyOf(choices);
        doubts = List.copyOf(doubts);
    }

    /** The month's sky and air: what the request says, else the world climatology, else the latitude. */
    public static SkyMonth of(MonthAt at) {
        List<Assumption> choices = new ArrayList<>();
        List<SkyDoubt> doubts = new ArrayList<>();
        SkySource source = SkySource.of(at);
        Derived h0 = source.extraterrestrial();
        SkyFigures sky = source.sky(h0, choices, doubts);
        AirFigures air = AirFigures.of(at, source, sky.clearness(), choices);
        return new SkyMonth(
                sky.basis(),
                h0,
                sky.clearness(),
                sky.spread(),
                sky.horizontalKwhM2(),
                sky.lowKwhM2(),
                sky.highKwhM2(),
                air.meanC(),
                air.dailySwingK(),
                air.daySpreadK(),
                air.errorK(),
                choices,
                doubts,
                source.cells().isEmpty() && at.ambient().isEmpty() ? Optional.of(RemoteAir.of(at)) : Optional.empty());
    }

    /** Air of the mean day, by hour of solar time [C]. */
    public double[] airC() {
        return AirTemperature.dayC(meanC.value(), dailySwingK.value());
    }

    /** What is doubtful of the skies that were given for these months, and of air that comes from far away, said once. */
    public static List<Caution> cautions(Stream<SkyMonth> months) {
        List<SkyMonth> all = months.toList();
        List<Caution> cautions =
                new ArrayList<>(SkyDoubt.cautions(all.stream().flatMap(month -> month.doubts().stream())));
        cautions.addAll(RemoteAir.cautions(all.stream().flatMap(month -> month.remote().stream())));
        return cautions;
    }
}
