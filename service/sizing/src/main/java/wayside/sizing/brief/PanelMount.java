package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * How the panels sit, as far as the request says.
 *
 * @param at where it was given
 * @param tiltDegrees from the horizontal, 0 to 90
 * @param azimuthDegrees the way they face, clockwise from north, 0 to 360; towards the equator if absent
 * @param shadedShare of the array's irradiation lost to roof gear and trees, 0 to 1
 * @param snowCoveredShare of the array's irradiation lost to snow that lies on it, 0 to 1; none if absent
 */
public record PanelMount(
        At at,
        OptionalDouble tiltDegrees,
        OptionalDouble azimuthDegrees,
        OptionalDouble shadedShare,
        OptionalDouble snowCoveredShare)
        implements Placed {
    /** Panels that no snow lies on. */
    public PanelMount(At at, OptionalDouble tiltDegrees, OptionalDouble azimuthDegrees, OptionalDouble shadedShare) {
        this(at, tiltDegrees, azimuthDegrees, shadedShare, OptionalDouble.empty());
    }

    /** Nothing is said. */
    public static final PanelMount OPEN = open(At.ROOT);

    /** Flat on the roof, unshaded. */
    public static final PanelMount FLAT = of(0, 180, 0);

    /** Nothing is said; it would stand there. */
    public static PanelMount open(At at) {
        return new PanelMount(at, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** The same tilted towards the equator. */
    public PanelMount tilted(double degrees) {
        return new PanelMount(at, OptionalDouble.of(degrees), OptionalDouble.empty(), shadedShare, snowCoveredShare);
    }

    /** Panels of which everything is said. */
    public static PanelMount of(double tiltDegrees, double azimuthDegrees, double shadedShare) {
        return new PanelMount(
                At.ROOT,
                OptionalDouble.of(tiltDegrees),
                OptionalDouble.of(azimuthDegrees),
                OptionalDouble.of(shadedShare));
    }
}
