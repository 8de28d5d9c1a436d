package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;

/**
 * What a short draws at a place of a system.
 *
 * @param voltageV of the battery that feeds it, nominal [V]
 * @param amperes of the short [A]
 * @param estimated whether that is an estimate of ours, so that the maker's figure may change it
 */
public record FaultCurrent(Derived voltageV, Derived amperes, boolean estimated) {
    /** The same for a place further on. */
    public FaultCurrent reduced(Derived less) {
        return new FaultCurrent(voltageV, less, estimated);
    }

    /** At a fuse that is fed by this. */
    public Feed feed() {
        return new Feed.Node(amperes, estimated);
    }
}
