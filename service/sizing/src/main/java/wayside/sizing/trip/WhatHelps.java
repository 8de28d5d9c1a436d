package wayside.sizing.trip;

import java.util.List;
import wayside.sizing.trace.Derived;

/**
 * One change to the system or to the way of travelling, and what it does.
 *
 * @param code stable, kebab-case: {@code more-panel}
 * @param change in plain words
 * @param chanceOfRunningFlat with this one change, in the same weathers
 * @param chanceWithout without it, in these weathers
 */
public record WhatHelps(String code, String change, Derived chanceOfRunningFlat, Derived chanceWithout) {
    /** Whether the change makes it better at all. */
    public boolean helps() {
        return chanceOfRunningFlat.value() < chanceWithout.value();
    }

    public List<Derived> figures() {
        return List.of(chanceOfRunningFlat, chanceWithout);
    }
}
