package wayside.sizing.wiring;

import java.util.List;
import java.util.Optional;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;

/**
 * One body's rules for conductors and fuses, read from its tables.
 *
 * <p>Sets differ widely for the same cable, so every answer names the one it used. A further set (the ISO standards for
 * small craft and campers, once their tables have been read in print) is one more class here and one line in
 * {@link RuleSets}.
 */
public interface RuleSet {
    /** What a request calls it: {@code abyc-e11}. */
    String code();

    /** The documents behind it. */
    Source source();

    /** The gauges it has figures for, thin to thick. */
    List<Gauge> gauges();

    /** The thinnest conductor that it lets be used. */
    Gauge thinnest();

    /**
     * Insulation class when the request leaves it open [C].
     *
     * @param label of the result
     * @param field JSON Pointer of the field that could have said otherwise, if there is one
     */
    Derived defaultInsulationC(String label, Optional<String> field);

    /**
     * Limit of the voltage drop when the request leaves it open [%].
     *
     * @param label of the result
     * @param field JSON Pointer of the field that could have said otherwise, if there is one
     */
    Derived defaultDropLimitPercent(String label, Optional<String> field);

    /** Area of a gauge as this set understands it [mm2]. */
    Derived areaMm2(Gauge gauge);

    /**
     * What a place makes of printed ampacities, whatever the gauge.
     *
     * @param labels whose conductor lies there
     * @throws IllegalArgumentException for an insulation class below the lowest of its table
     */
    Derating derating(ConductorLabels labels, Surroundings surroundings);

    /**
     * What one conductor may carry where it lies [A]; 0 when it lies hotter than its insulation stands.
     *
     * @param labels whose conductor it is
     * @param derating of the place
     */
    Derived ampacityA(ConductorLabels labels, Gauge gauge, Derating derating);

    /**
     * Resistance to reckon the voltage drop with [Ohm/km].
     *
     * @param labels whose conductor it is
     * @param conductorC temperature of the copper at the circuit's current, for a set that asks for it [C]
     */
    Derived resistanceOhmPerKm(ConductorLabels labels, Gauge gauge, Derived conductorC);

    /** The standard fuse ratings, small to large [A]. */
    FuseRatings fuseRatings();

    /** The largest fuse that this project puts on a conductor [A]: never more than its ampacity. */
    Derived fuseLimitA(ConductorLabels labels, Gauge gauge, Derived ampacityA);

    /** The largest fuse that the set would permit [A]; reported beside the one chosen. */
    Derived permittedFuseA(ConductorLabels labels, Gauge gauge, Derived ampacityA);
}
