package wayside.sizing.solar.sky;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Unit;

/**
 * A sky that the request gives and that no month can have. However many months have one, a reader is told once.
 *
 * @param month 1 to 12
 * @param clearness share of the sunlight above the atmosphere that it lets through; 0 where the sun does not rise
 */
record SkyDoubt(int month, double clearness) {
    static SkyDoubt darkness(MonthAt at) {
        return new SkyDoubt(at.month(), 0);
    }

    static SkyDoubt glare(MonthAt at, double clearness) {
        return new SkyDoubt(at.month(), clearness);
    }

    /** One caution for all months that are too dark, and one for all that are too bright, if there are any. */
    static List<Caution> cautions(Stream<SkyDoubt> doubts) {
        List<SkyDoubt> dark = new ArrayList<>();
        List<SkyDoubt> bright = new ArrayList<>();
        doubts.forEach(doubt -> (doubt.clearness() == 0 ? dark : bright).add(doubt));
        List<Caution> cautions = new ArrayList<>();
        if (!dark.isEmpty()) {
            cautions.add(warning(Message.of(CautionCode.IRRADIATION_WITHOUT_SUN, months(dark))));
        }
        bright.stream()
                .map(SkyDoubt::clearness)
                .max(Double::compare)
                .map(most -> Message.of(
                        CautionCode.IMPLAUSIBLE_SKY, months(bright), Parameter.number("clearness", most, Unit.SHARE)))
                .map(SkyDoubt::warning)
                .ifPresent(cautions::add);
        return cautions;
    }

    private static Caution warning(Message message) {
        return new Caution(message, Severity.WARNING, SkyFigures.CLEARNESS_INDEX);
    }

    private static Parameter months(List<SkyDoubt> doubts) {
        List<Integer> months = doubts.stream().map(SkyDoubt::month).distinct().toList();
        return Parameter.numbers("months", months, Unit.COUNT);
    }
}
