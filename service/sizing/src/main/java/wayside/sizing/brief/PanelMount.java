package wayside.sizing.brief;

/**
 * How the panels sit.
 *
 * @param tiltDegrees from the horizontal, 0 to 90
 * @param azimuthDegrees the way they face, clockwise from north, 0 to 360
 * @param shadedShare of the array's irradiation lost to roof gear and trees, 0 to 1
 */
public record PanelMount(double tiltDegrees, double azimuthDegrees, double shadedShare) {
    /** Flat on the roof, unshaded. */
    public static final PanelMount FLAT = new PanelMount(0, 180, 0);
}
