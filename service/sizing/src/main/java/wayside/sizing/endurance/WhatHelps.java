package wayside.sizing.endurance;

import java.util.List;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;

/**
 * One change to the system or to the way of travelling, and what it does.
 *
 * @param change what is changed, and by how much
 * @param chanceOfRunningFlat with this one change, in the same weathers
 * @param chanceWithout without it, in these weathers
 */
public record WhatHelps(Message change, Derived chanceOfRunningFlat, Derived chanceWithout) {
    /** Stable, kebab-case: {@code more-panel}. */
    public String code() {
        return change.code().code();
    }

    /** Whether the change makes it better at all. */
    public boolean helps() {
        return chanceOfRunningFlat.value() < chanceWithout.value();
    }

    public List<Derived> figures() {
        return List.of(chanceOfRunningFlat, chanceWithout);
    }
}
