package wayside.sizing.ledger;

import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.storage.TemperatureCapacity;

/**
 * {@link TemperatureCapacity} at each half degree, linear between: quick to read by the hour. For lithium it is the same, its
 * rows stand at whole degrees; for lead-acid it is within a thousandth.
 */
final class CapacityTable {
    private static final int COLDEST_C = -80;
    private static final int WARMEST_C = 80;
    private static final Map<Chemistry, CapacityTable> TABLES =
            Arrays.stream(Chemistry.values()).collect(Collectors.toMap(Function.identity(), CapacityTable::new));

    private final double[] shares = new double[2 * (WARMEST_C - COLDEST_C) + 1];

    private CapacityTable(Chemistry chemistry) {
        for (int i = 0; i < shares.length; i++) {
            shares[i] = TemperatureCapacity.capacityShare(chemistry, COLDEST_C + i / 2.0);
        }
    }

    static CapacityTable of(Chemistry chemistry) {
        return Objects.requireNonNull(TABLES.get(chemistry));
    }

    /** Share of the rated capacity; held at both ends. */
    double at(double cellC) {
        double above = 2 * (cellC - COLDEST_C);
        int row = (int) above;
        if (row < 0) {
            return shares[0];
        }
        if (row >= shares.length - 1) {
            return shares[shares.length - 1];
        }
        return shares[row] + (above - row) * (shares[row + 1] - shares[row]);
    }
}
