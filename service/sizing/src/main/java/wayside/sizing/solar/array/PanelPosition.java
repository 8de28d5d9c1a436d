package wayside.sizing.solar.array;

import java.util.Optional;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.solar.plane.Plane;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * How the panels sit, what the request left open filled in.
 *
 * @param tilt from the horizontal [deg]
 * @param azimuth the way they face, clockwise from north [deg]
 * @param shadedShare of the light lost to roof gear and trees
 * @param snowCoveredShare of the light lost to snow on the panel, where that was given
 */
public record PanelPosition(Derived tilt, Derived azimuth, Derived shadedShare, Optional<Derived> snowCoveredShare) {
    /** Shading of NREL's default losses. */
    private static final double SHADED_SHARE = 0.03;

    /**
     * The position of a mount at a latitude.
     *
     * @param mount as the request states it; {@link PanelMount#OPEN} when it says nothing
     */
    public static PanelPosition of(PanelMount mount, double latitude) {
        Derived tilt = Derived.byDefault(
                        "panel tilt",
                        0,
                        Unit.DEGREE,
                        mount.at("tiltDegrees"),
                        "Flat on the roof, as most vehicles carry them",
                        Source.commonPractice())
                .unlessGiven(mount.tiltDegrees());
        Derived azimuth = azimuth(mount, latitude < 0);
        Derived shaded = Derived.byDefault(
                        "loss: shading",
                        SHADED_SHARE,
                        Unit.SHARE,
                        mount.at("shadedShare"),
                        "A clear site; parked under trees or beside a roof box it is far more",
                        ArrayLosses.SOURCE)
                .unlessGiven(mount.shadedShare());
        Optional<Derived> snow = mount.snowCoveredShare().isPresent()
                ? Optional.of(Derived.given(
                        "loss: snow on the panel",
                        mount.snowCoveredShare().getAsDouble(),
                        Unit.SHARE,
                        mount.at("snowCoveredShare")))
                : Optional.empty();
        return new PanelPosition(tilt, azimuth, shaded, snow);
    }

    /** A trip over the equator turns the panel: two defaults, so two labels. */
    private static Derived azimuth(PanelMount mount, boolean southern) {
        String label = "panel azimuth";
        String field = mount.at("azimuthDegrees");
        return mount.azimuthDegrees().isPresent()
                ? Derived.given(label, mount.azimuthDegrees().getAsDouble(), Unit.DEGREE, field)
                : Derived.byDefault(
                        southern ? label + " south of the equator" : label,
                        southern ? 0 : 180,
                        Unit.DEGREE,
                        field,
                        "Towards the equator: south in the northern hemisphere, north in the southern",
                        Source.commonPractice());
    }

    public Plane plane() {
        return Plane.of(tilt.value(), azimuth.value());
    }
}
