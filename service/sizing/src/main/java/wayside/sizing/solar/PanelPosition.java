package wayside.sizing.solar;

import wayside.sizing.brief.PanelMount;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * How the panels sit, what the request left open filled in.
 *
 * @param tilt from the horizontal [deg]
 * @param azimuth the way they face, clockwise from north [deg]
 * @param shadedShare of the light lost to roof gear and trees
 */
public record PanelPosition(Derived tilt, Derived azimuth, Derived shadedShare) {
    /** Shading of NREL's default losses. */
    private static final double SHADED_SHARE = 0.03;

    /**
     * The position of a mount at a latitude.
     *
     * @param mount as the request states it; {@link PanelMount#OPEN} when it says nothing
     * @param path JSON Pointer of the panel object
     */
    public static PanelPosition of(PanelMount mount, String path, double latitude) {
        Derived tilt = Derived.assumed(
                        "panel tilt",
                        0,
                        Unit.DEGREE,
                        path + "/tiltDegrees",
                        "Flat on the roof, as most vehicles carry them",
                        Source.commonPractice())
                .unlessGiven(mount.tiltDegrees());
        Derived azimuth = Derived.assumed(
                        "panel azimuth",
                        latitude < 0 ? 0 : 180,
                        Unit.DEGREE,
                        path + "/azimuthDegrees",
                        "Towards the equator: south in the northern hemisphere, north in the southern",
                        Source.commonPractice())
                .unlessGiven(mount.azimuthDegrees());
        Derived shaded = Derived.assumed(
                        "loss: shading",
                        SHADED_SHARE,
                        Unit.SHARE,
                        path + "/shadedShare",
                        "A clear site; parked under trees or beside a roof box it is far more",
                        ArrayLosses.SOURCE)
                .unlessGiven(mount.shadedShare());
        return new PanelPosition(tilt, azimuth, shaded);
    }

    public Plane plane() {
        return Plane.of(tilt.value(), azimuth.value());
    }
}
