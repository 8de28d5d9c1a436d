package wayside.sizing.brief;

/**
 * A battery that exists.
 *
 * @param voltageV nominal [V]: 12.8 for four cells of LFP
 * @param capacityAh rated [Ah]
 * @param mostInSeries batteries in one string
 * @param mostInParallel strings side by side
 */
public record BatterySize(
        SizeOrigin origin,
        Chemistry chemistry,
        double voltageV,
        double capacityAh,
        int mostInSeries,
        int mostInParallel,
        double massKg,
        Box box)
        implements PartSize {
    /** Rated, of one [Wh]. */
    public double energyWh() {
        return voltageV * capacityAh;
    }
}
