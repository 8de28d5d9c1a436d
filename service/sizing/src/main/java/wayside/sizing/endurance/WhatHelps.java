package wayside.sizing.endurance;

import java.util.Optional;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;

/**
 * One change to the system or to the way of travelling, and what it does.
 *
 * @param change what is changed, and by how much
 * @param chanceOfRunningFlat with this one change, in the same weathers
 * @param chanceWithout without it, in these weathers
 * @param spared what it takes off that chance
 * @param addedKg mass of the parts that it adds [kg]; none where it is a habit
 */
public record WhatHelps(
        Message change,
        Derived chanceOfRunningFlat,
        Derived chanceWithout,
        SparedChance spared,
        Optional<Derived> addedKg) {
    /** Stable, kebab-case: {@code more-panel}. */
    public String code() {
        return change.code().code();
    }

    /** Whether the change makes it better, by more than luck. */
    public boolean helps() {
        return spared.low().value() > 0;
    }
}
