package wayside.sizing.brief;

/**
 * A solar module that exists, by its label at 1000 W/m2 and 25 C.
 *
 * @param powerW rated [W]
 * @param openCircuitV [V]
 * @param workingV at its best point [V]
 * @param shortCircuitA [A]
 * @param workingA at its best point [A]
 * @param largestSeriesFuseA that may stand in series with it [A]
 */
public record ModuleSize(
        SizeOrigin origin,
        double powerW,
        double openCircuitV,
        double workingV,
        double shortCircuitA,
        double workingA,
        double largestSeriesFuseA,
        double massKg,
        Box box)
        implements PartSize {}
