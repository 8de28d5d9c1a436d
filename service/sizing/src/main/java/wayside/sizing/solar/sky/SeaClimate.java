package wayside.sizing.solar.sky;

/**
 * Air off the land cells: sea, small islands, both poles. The file's head holds its recipe and its errors. It is read when first
 * asked for.
 */
final class SeaClimate {
    private static final int MONTHS = 12;

    private final double elevationM;
    private final double[] seaLevelC = new double[MONTHS];

    /** Holds the table; the class is loaded on first use. */
    private static final class Holder {
        static final CellGrid GRID = CellGrid.read("world-temperature-sea", 1 + MONTHS);
    }

    private SeaClimate(double latitude, double longitude) {
        CellGrid grid = Holder.GRID;
        double weights = 0;
        double elevation = 0;
        for (int corner = 0; corner < CellGrid.CORNERS; corner++) {
            int cell = grid.corner(latitude, longitude, corner);
            if (cell >= 0) {
                double weight = CellGrid.weight(latitude, longitude, corner);
                double cellM = grid.value(cell, 0, 1);
                weights += weight;
                elevation += weight * cellM;
                for (int month = 0; month < MONTHS; month++) {
                    double c = grid.value(cell, 1 + month, 10) + WorldClimatology.LAPSE_K_PER_M * cellM;
                    seaLevelC[month] += weight * c;
                }
            }
        }
        elevationM = elevation / weights;
        for (int month = 0; month < MONTHS; month++) {
            seaLevelC[month] /= weights;
        }
    }

    /** The air at a place that no land cell is near. */
    static SeaClimate at(double latitude, double longitude) {
        return new SeaClimate(latitude, longitude);
    }

    static int cells() {
        return Holder.GRID.cells();
    }

    /** Mean of the cells round about [m]. */
    double elevationM() {
        return elevationM;
    }

    /** Mean temperature of a month as at sea level [C]. */
    double seaLevelC(int month) {
        return seaLevelC[month - 1];
    }

    /** Warmest less coldest month [K]. */
    double yearK() {
        double low = seaLevelC[0];
        double high = seaLevelC[0];
        for (double c : seaLevelC) {
            low = Math.min(low, c);
            high = Math.max(high, c);
        }
        return high - low;
    }
}
