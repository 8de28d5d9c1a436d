package wayside.sizing.ledger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Sky;
import wayside.sizing.solar.ArrayModel;
import wayside.sizing.solar.MonthAt;
import wayside.sizing.solar.SkyMonth;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Unit;

/**
 * Predicted chance against what happens. Each start day of each month of 60 real typical years is a trip from a full bank, for
 * banks of half a day to two days of load and loads of 0.6 to 1 of a flat panel's mean yield; the prediction knows the month's
 * mean only, or not even that.
 */
final class ChanceTable {
    static final double[] EDGES = {0, 0.005, 0.02, 0.05, 0.1, 0.2, 0.4, 0.6, 0.8, 1.0001};

    private static final double[] BANK_DAYS = {0.5, 1, 1.5, 2};
    private static final double[] LOAD_SHARES = {0.6, 0.7, 0.8, 0.9, 1.0};
    private static final double PANEL_W = 100;

    private final int nights;
    private final int runs;
    private final boolean given;
    private final SkyScatter scatter;

    ChanceTable(int nights, int runs, boolean given, SkyScatter scatter) {
        this.nights = nights;
        this.runs = runs;
        this.given = given;
        this.scatter = scatter;
    }

    /** As the service predicts: the irradiation given, or not even that. */
    static ChanceTable asServed(int nights, int runs, boolean given) {
        double ofMean = given ? SkyScatter.MEAN_GIVEN : SkyScatter.MEAN_FROM_TABLE;
        return new ChanceTable(nights, runs, given, SkyScatter.of(ofMean, SkyScatter.SPREAD));
    }

    /** One class of predicted chance at one station: sums over trips. */
    record Cell(String station, int group, double trips, double predicted, double came) {}

    /** All cells of the months, in order. */
    List<Cell> cells(List<RealMonth> months) {
        return IntStream.range(0, months.size())
                .parallel()
                .mapToObj(i -> ofMonth(months.get(i)))
                .flatMap(List::stream)
                .toList();
    }

    private List<Cell> ofMonth(RealMonth real) {
        Optional<Sky> said = Optional.of(new Sky.Clearness(real.clearness()));
        MonthAt at = new MonthAt(
                At.ROOT,
                real.place(),
                real.month(),
                given ? said : Optional.empty(),
                Optional.of(new Ambient(15, 10)),
                "month");
        SkyMonth sky = SkyMonth.of(at);
        ArrayModel array = ArrayModel.of(PanelMount.FLAT, real.place().latitude());
        StaySky stay = new StaySky(real.place().latitude(), real.month(), nights, sky, array, scatter);
        double meanWh = PANEL_W * SolarMonth.of(at, array).yieldWhPerW().value();
        List<double[]> drawn = drawn(stay);
        List<double[]> lived = lived(stay, real);
        List<Cell> cells = new ArrayList<>();
        for (double bankDays : BANK_DAYS) {
            for (double loadShare : LOAD_SHARES) {
                Ledger ledger = ledger(loadShare * meanWh, bankDays);
                double predicted = share(ledger, drawn);
                double came = share(ledger, lived);
                cells.add(new Cell(
                        real.station(), group(predicted), lived.size(), predicted * lived.size(), came * lived.size()));
            }
        }
        return cells;
    }

    private Ledger ledger(double dailyWh, double bankDays) {
        ChemistryData data = ChemistryData.of(Chemistry.LFP);
        double nominal = bankDays
                * dailyWh
                / (data.usableShare().value() * data.dischargeEfficiency().value());
        double[] none = new double[Unit.HOURS_PER_DAY];
        double[] mild = new double[Unit.HOURS_PER_DAY];
        Arrays.fill(mild, 25);
        LedgerDay day = new LedgerDay(
                nights,
                HourlyUses.steady(dailyWh / Unit.HOURS_PER_DAY),
                HourlyUses.steady(0),
                none,
                none,
                new double[][] {mild});
        return new Ledger(List.of(day), new LedgerBank(data, nominal, 1, 1), PANEL_W, 1);
    }

    private List<double[]> drawn(StaySky stay) {
        Weather weather = new ModelWeather(List.of(stay), 1);
        List<double[]> yields = new ArrayList<>();
        for (int run = 0; run < runs; run++) {
            double[] yield = new double[weather.hours()];
            weather.fill(run, yield);
            yields.add(yield);
        }
        return yields;
    }

    private List<double[]> lived(StaySky stay, RealMonth real) {
        List<double[]> yields = new ArrayList<>();
        for (int start = 0; start + nights <= real.days().size(); start++) {
            double[] yield = new double[nights * Unit.HOURS_PER_DAY];
            for (int night = 0; night < nights; night++) {
                stay.fillDay(real.days().get(start + night), yield, night * Unit.HOURS_PER_DAY);
            }
            yields.add(yield);
        }
        return yields;
    }

    private static double share(Ledger ledger, List<double[]> yields) {
        Tally tally = new Tally(ledger.bank);
        long flat = yields.stream()
                .filter(yield -> ledger.run(
                        yield, new int[yield.length / Unit.HOURS_PER_DAY], true, tally, new double[yield.length]))
                .count();
        return (double) flat / yields.size();
    }

    private static int group(double chance) {
        int group = 0;
        while (chance >= EDGES[group + 1]) {
            group++;
        }
        return group;
    }

    /**
     * A class over all stations.
     *
     * @param predicted mean predicted chance
     * @param came share of the trips that ran flat
     * @param error standard error of the difference, the stations being what is independent
     */
    record Group(double trips, double predicted, double came, double error) {
        static Group of(List<Cell> cells, int group) {
            List<Cell> mine = cells.stream().filter(c -> c.group() == group).toList();
            double trips = mine.stream().mapToDouble(Cell::trips).sum();
            double predicted = mine.stream().mapToDouble(Cell::predicted).sum() / trips;
            double came = mine.stream().mapToDouble(Cell::came).sum() / trips;
            double difference = came - predicted;
            double squares = mine.stream()
                    .map(Cell::station)
                    .distinct()
                    .mapToDouble(station -> {
                        double sum = mine.stream()
                                .filter(c -> c.station().equals(station))
                                .mapToDouble(c -> c.came() - c.predicted() - difference * c.trips())
                                .sum();
                        return sum * sum;
                    })
                    .sum();
            return new Group(trips, predicted, came, Math.sqrt(squares) / trips);
        }
    }

    List<Group> groups(List<RealMonth> months) {
        List<Cell> cells = cells(months);
        return IntStream.range(0, EDGES.length - 1)
                .mapToObj(group -> Group.of(cells, group))
                .toList();
    }

    private String lines(List<RealMonth> months) {
        StringBuilder head = new StringBuilder("| " + nights + " nights, "
                + (given ? "irradiation given" : "irradiation from the table") + ": predicted |");
        StringBuilder came = new StringBuilder("| came true |");
        StringBuilder error = new StringBuilder("| standard error |");
        for (Group group : groups(months)) {
            head.append(cell(group.predicted()));
            came.append(cell(group.came()));
            error.append(cell(group.error()));
        }
        return head + "\n" + "|---".repeat(EDGES.length) + "|\n" + came + "\n" + error + "\n";
    }

    /** Prints the tables. */
    @SuppressWarnings("SystemOut")
    public static void main(String[] arguments) {
        List<RealMonth> months = RealMonth.all();
        int runs = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1000;
        for (int nights : new int[] {5, 2, 10}) {
            System.out.println(asServed(nights, runs, true).lines(months));
            System.out.println(asServed(nights, runs, false).lines(months));
        }
    }

    /** A class that no trip fell into has no figure. */
    private static String cell(double share) {
        return Double.isNaN(share) ? " - |" : String.format(Locale.ROOT, " %.3f |", share);
    }
}
