package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * How the panels sit, as far as the request says.
 *
 * @param tiltDegrees from the horizontal, 0 to 90
 * @param azimuthDegrees the way they face, clockwise from north, 0 to 360; towards the equator if absent
 * @param shadedShare of the array's irradiation lost to roof gear and trees, 0 to 1
 */
public record PanelMount(OptionalDouble tiltDegrees, OptionalDouble azimuthDegrees, OptionalDouble shadedShare) {
    /** Nothing is said. */
    public static final PanelMount OPEN =
            new PanelMount(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /** Flat on the roof, unshaded. */
    public static final PanelMount FLAT = of(0, 180, 0);

    /** Panels of which everything is said. */
    public static PanelMount of(double tiltDegrees, double azimuthDegrees, double shadedShare) {
        return new PanelMount(
                OptionalDouble.of(tiltDegrees), OptionalDouble.of(azimuthDegrees), OptionalDouble.of(shadedShare));
    }
}
