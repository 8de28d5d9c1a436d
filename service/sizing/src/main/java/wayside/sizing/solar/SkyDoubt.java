package wayside.sizing.solar;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Severity;

/**
 * A sky that the request gives and that no month can have. However many months have one, a reader is told once.
 *
 * @param label of the month: {@code stay 1}
 * @param clearness share of the sunlight above the atmosphere that it lets through; 0 where the sun does not rise
 */
record SkyDoubt(String label, double clearness) {
    private static final int NAMED = 12;

    static SkyDoubt darkness(MonthAt at) {
        return new SkyDoubt(at.label(), 0);
    }

    static SkyDoubt glare(MonthAt at, double clearness) {
        return new SkyDoubt(at.label(), clearness);
    }

    /** One caution for all doubtful months, if there are any. */
    static Optional<Caution> caution(Stream<SkyDoubt> doubts) {
        List<SkyDoubt> dark = new ArrayList<>();
        List<SkyDoubt> bright = new ArrayList<>();
        doubts.forEach(doubt -> (doubt.clearness() == 0 ? dark : bright).add(doubt));
        String text = Stream.of(darkness(dark), glare(bright))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
        return text.isEmpty()
                ? Optional.empty()
                : Optional.of(new Caution("implausible-sky", Severity.WARNING, text, SkyFigures.CLEARNESS_INDEX));
    }

    private static Optional<String> darkness(List<SkyDoubt> months) {
        return months.isEmpty()
                ? Optional.empty()
                : Optional.of("In " + names(months)
                        + " the sun doesn't rise, yet irradiation was given. None of it is counted.");
    }

    private static Optional<String> glare(List<SkyDoubt> months) {
        return months.stream()
                .map(SkyDoubt::clearness)
                .max(Double::compare)
                .map(most -> String.format(
                        Locale.ROOT,
                        "In %s the sky given lets %s%.2f of the sunlight above the atmosphere through, more than a month of"
                                + " cloudless days. Check that it is per day and in kWh/m2, not in MJ/m2.",
                        names(months),
                        months.size() > 1 ? "up to " : "",
                        most));
    }

    private static String names(List<SkyDoubt> months) {
        List<String> names =
                months.stream().map(SkyDoubt::label).distinct().limit(NAMED).toList();
        int more = (int) months.stream().map(SkyDoubt::label).distinct().count() - names.size();
        if (more > 0) {
            return String.join(", ", names) + " and " + more + " more";
        }
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
