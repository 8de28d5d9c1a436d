package wayside.sizing.ledger;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.solar.epw.HourlyStations;
import wayside.sizing.solar.epw.HourlyStations.Station;

/** Predicted chance against what happens in real hours, months with and without frost apart. */
final class ChanceTable {
    private static final int MONTHS = 12;

    private ChanceTable() {}

    /** All systems in all months of the stations. */
    static List<ChanceCell> cells(ChanceCase asked, List<Station> stations, int runs) {
        return IntStream.range(0, MONTHS * stations.size())
                .parallel()
                .mapToObj(i -> ChanceTrips.of(asked, stations.get(i / MONTHS), i % MONTHS + 1, runs))
                .flatMap(trips -> trips.map(ChanceTrips::cells).orElse(List.of()).stream())
                .toList();
    }

    /** Prints the tables. */
    @SuppressWarnings("SystemOut")
    public static void main(String[] arguments) {
        int runs = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1000;
        List<Station> stations = HourlyStations.all();
        System.out.println(
                "| told > came true, * outside a third and two standard errors; fewer than ten stations are said | .01-.02 | .02-.05 | .05-.1 |"
                        + " .1-.2 | .2-.35 | .35-.5 |");
        System.out.println("|---|---|---|---|---|---|---|");
        for (ChanceCase asked : List.of(
                ChanceCase.plain(5),
                ChanceCase.plain(2),
                ChanceCase.plain(10),
                ChanceCase.plain(5).tilted(30),
                ChanceCase.plain(5).driving(1),
                ChanceCase.plain(5).of(Chemistry.AGM),
                ChanceCase.plain(5).lagging(0),
                ChanceCase.plain(5).placeAlone())) {
            List<ChanceCell> cells = cells(asked, stations, runs);
            System.out.println(line("frost: " + asked.words(), cells, cell -> cell.frost() && !cell.small()));
            System.out.println(line("no frost: " + asked.words(), cells, cell -> !cell.frost() && !cell.small()));
            System.out.println(line("small bank: " + asked.words(), cells, ChanceCell::small));
        }
    }

    private static String line(String words, List<ChanceCell> cells, Predicate<ChanceCell> some) {
        StringBuilder line = new StringBuilder("| " + words + " |");
        for (ChanceGroup group : ChanceGroup.of(cells.stream().filter(some).toList())) {
            line.append(
                    Double.isNaN(group.told())
                            ? " - |"
                            : String.format(
                                    Locale.ROOT,
                                    " %.3f > %.3f +- %.3f%s%s |",
                                    group.told(),
                                    group.came(),
                                    2 * group.error(),
                                    group.cameTrue() ? "" : " *",
                                    group.isOfFewStations() ? " (" + group.stations() + " stations)" : ""));
        }
        return line.toString();
    }
}
