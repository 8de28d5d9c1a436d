package wayside.sizing.solar.sky;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A month of the world climatology at a place: the cells round about, weighted.
 *
 * @param clearness empty when the sun doesn't rise in any of the cells
 * @param spread standard deviation of the daily clearness; empty with it
 * @param seaLevelC mean temperature as at sea level [C]
 * @param elevationM mean of the cells [m]
 * @param temperatureSpreadK standard deviation of a day's mean temperature [K]
 * @param swingK of a day's temperature, as a cosine [K]
 * @param cells how many of the four corners exist
 */
record CellMonth(
        OptionalDouble clearness,
        OptionalDouble spread,
        double seaLevelC,
        double elevationM,
        double temperatureSpreadK,
        double swingK,
        int cells) {
    /** The month at a place, or nothing when none of the four cells round it is land. */
    static Optional<CellMonth> find(double latitude, double longitude, int month) {
        WorldClimatology table = WorldClimatology.get();
        Sums sums = new Sums();
        for (int corner = 0; corner < CellGrid.CORNERS; corner++) {
            int cell = table.corner(latitude, longitude, corner);
            if (cell >= 0) {
                sums.add(table, cell, month, CellGrid.weight(latitude, longitude, corner));
            }
        }
        return sums.cells == 0 ? Optional.empty() : Optional.of(sums.mean());
    }

    private static final class Sums {
        private int cells;
        private double weights;
        private double sunnyWeights;
        private double clearness;
        private double spread;
        private double seaLevelC;
        private double elevationM;
        private double temperatureSpreadK;
        private double swingK;

        void add(WorldClimatology table, int cell, int month, double weight) {
            cells++;
            weights += weight;
            seaLevelC += weight * table.seaLevelC(cell, month);
            elevationM += weight * table.elevationM(cell);
            temperatureSpreadK += weight * table.temperatureSpreadK(cell, month);
            swingK += weight * table.swingK(cell, month);
            double k = table.clearness(cell, month);
            if (!Double.isNaN(k)) {
                sunnyWeights += weight;
                clearness += weight * k;
                spread += weight * table.spread(cell, month);
            }
        }

        CellMonth mean() {
            boolean sunny = sunnyWeights > 0;
            return new CellMonth(
                    sunny ? OptionalDouble.of(clearness / sunnyWeights) : OptionalDouble.empty(),
                    sunny ? OptionalDouble.of(spread / sunnyWeights) : OptionalDouble.empty(),
                    seaLevelC / weights,
                    elevationM / weights,
                    temperatureSpreadK / weights,
                    swingK / weights,
                    cells);
        }
    }
}
