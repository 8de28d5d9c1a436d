package wayside.sizing.solar.sky;

/**
 * Clearness, its day-to-day spread and temperature by month on land cells of 3 degrees, and how a day's temperature spreads and
 * swings there. The files' heads hold their recipes, citations and errors. They are read when first asked for.
 */
final class WorldClimatology {
    static final double LAPSE_K_PER_M = 0.005;

    private static final int MONTHS = 12;

    private final CellGrid means = CellGrid.read("world-climatology", 1 + 3 * MONTHS);
    private final CellGrid days = CellGrid.read("world-temperature-days", 2 * MONTHS);

    /** Holds the tables; the class is loaded on first use. */
    private static final class Holder {
        static final WorldClimatology TABLE = new WorldClimatology();
    }

    private WorldClimatology() {}

    static WorldClimatology get() {
        return Holder.TABLE;
    }

    /** How many cells there are. */
    int cells() {
        return means.cells();
    }

    /** Index of the cell at a corner round a place, or -1; see {@link CellGrid#corner}. */
    int corner(double latitude, double longitude, int corner) {
        return means.corner(latitude, longitude, corner);
    }

    /** Clearness of a cell, NaN in a month without sun. */
    double clearness(int cell, int month) {
        return means.value(cell, month, 1000);
    }

    /** Standard deviation of the daily clearness, NaN in a month without sun. */
    double spread(int cell, int month) {
        return means.value(cell, MONTHS + month, 1000);
    }

    /** Mean temperature as at sea level [C]. */
    double seaLevelC(int cell, int month) {
        return means.value(cell, 2 * MONTHS + month, 10) + LAPSE_K_PER_M * elevationM(cell);
    }

    double elevationM(int cell) {
        return means.value(cell, 0, 1);
    }

    /** Standard deviation of a day's mean temperature about the month's [K]; both files have the same cells in one order. */
    double temperatureSpreadK(int cell, int month) {
        return days.value(cell, month - 1, 10);
    }

    /** Highest less lowest temperature of a day, as a cosine [K]. */
    double swingK(int cell, int month) {
        return days.value(cell, MONTHS + month - 1, 10);
    }

    /** How many cells the file of the days has. */
    int cellsOfDays() {
        return days.cells();
    }

    /** Whether both files have the same cell there. */
    boolean agree(double latitude, double longitude) {
        return days.corner(latitude, longitude, 0) == means.corner(latitude, longitude, 0);
    }
}
