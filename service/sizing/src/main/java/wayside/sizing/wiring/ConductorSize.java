package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;

/** A size that a conductor is sold in. */
public sealed interface ConductorSize {
    /** As it is spoken: {@code 6 AWG}, {@code 16 mm2}. */
    String title();

    /** The gauge whose ampacity it may be given. */
    Gauge ratedAs();

    /** A size of the gauge series. */
    record Awg(Gauge gauge) implements ConductorSize {
        @Override
        public String title() {
            return gauge.title();
        }

        @Override
        public Gauge ratedAs() {
            return gauge;
        }
    }

    /**
     * A flexible conductor by its nominal area.
     *
     * @param title {@code 16 mm2}
     * @param areaMm2 nominal [mm2]
     * @param resistance20OhmPerKm the largest that the standard allows at 20 C [Ohm/km]
     * @param ratedAs the thickest gauge that is not thicker
     */
    record Metric(String title, Derived areaMm2, Derived resistance20OhmPerKm, Gauge ratedAs)
            implements ConductorSize {}
}
