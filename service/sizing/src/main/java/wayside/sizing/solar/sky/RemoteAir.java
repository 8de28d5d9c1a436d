package wayside.sizing.solar.sky;

import java.util.List;
import java.util.stream.Stream;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Unit;

/**
 * A month whose air comes from the sea or the ice round about, for no land cell is near and nobody gave it.
 *
 * @param month 1 to 12
 * @param rangeK how far its mean may be off [K]
 */
record RemoteAir(int month, double rangeK) {
    private static final double NEAR_SEA_LEVEL_K = 3;
    private static final double HIGH_OR_POLAR_K = 5;
    private static final double HIGH_M = 2000;
    private static final double POLAR_DEGREES = 70;

    static RemoteAir of(MonthAt at) {
        return new RemoteAir(at.month(), rangeK(at));
    }

    /** Likely error of the month's mean [K]. */
    static double rangeK(MonthAt at) {
        double elevationM = at.place().elevationM().orElseGet(() -> SeaClimate.at(
                        at.place().latitude(), at.place().longitude())
                .elevationM());
        boolean sure = elevationM <= HIGH_M && Math.abs(at.place().latitude()) <= POLAR_DEGREES;
        return sure ? NEAR_SEA_LEVEL_K : HIGH_OR_POLAR_K;
    }

    /** One caution for all such months, if there are any. */
    static List<Caution> cautions(Stream<RemoteAir> some) {
        List<RemoteAir> all = some.toList();
        if (all.isEmpty()) {
            return List.of();
        }
        List<Integer> months = all.stream().map(RemoteAir::month).distinct().toList();
        double most = all.stream().mapToDouble(RemoteAir::rangeK).max().orElseThrow();
        Message message = Message.of(
                CautionCode.TEMPERATURE_OFF_LAND,
                Parameter.numbers("months", months, Unit.COUNT),
                Parameter.number("range", most, Unit.KELVIN));
        return List.of(new Caution(message, Severity.WARNING, AirFigures.ITU));
    }
}
