package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;

/**
 * A conductor in its place.
 *
 * @param size what to buy
 * @param parallelCount conductors side by side each way, 1 unless one is not enough [1]
 * @param areaMm2 of one of them, as the rule set understands its size [mm2]
 * @param ampacityA of all of them together, where they lie [A]
 * @param fuseLimitA the largest fuse that they may have here [A]
 * @param permittedFuseA the largest fuse that the rule set would permit [A]
 * @param resistanceOhmPerKm of one of them [Ohm/km]
 * @param outlastedA2s heat of a short that one of them outlasts [A2s]
 * @param voltageDropV both ways [V]
 * @param voltageDropPercent of the nominal voltage [%]
 */
public record SizedConductor(
        ConductorSize size,
        Derived parallelCount,
        Derived areaMm2,
        Derived ampacityA,
        Derived fuseLimitA,
        Derived permittedFuseA,
        Derived resistanceOhmPerKm,
        Derived outlastedA2s,
        Derived voltageDropV,
        Derived voltageDropPercent) {}
