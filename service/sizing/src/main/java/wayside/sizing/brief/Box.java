package wayside.sizing.brief;

/**
 * Outer size of a part as it stands.
 *
 * @param lengthMm [mm], above 0
 * @param widthMm [mm], above 0
 * @param heightMm [mm], above 0
 */
public record Box(double lengthMm, double widthMm, double heightMm) {
    /** Around it [L]. */
    public double volumeL() {
        return lengthMm * widthMm * heightMm / 1e6;
    }
}
