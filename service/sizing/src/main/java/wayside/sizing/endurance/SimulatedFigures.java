package wayside.sizing.endurance;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** Explains figures that come straight out of the ledger by all that went into it. */
public interface SimulatedFigures {
    /**
     * A figure.
     *
     * @param text what the simulation counts
     */
    Derived step(String label, double value, Unit unit, String text);
}
