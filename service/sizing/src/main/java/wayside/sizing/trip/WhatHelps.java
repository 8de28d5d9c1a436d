package wayside.sizing.trip;

import wayside.sizing.trace.Derived;

/**
 * One change to the system or to the way of travelling, and what it does.
 *
 * @param code stable, kebab-case: {@code more-panel}
 * @param change in plain words
 * @param chanceOfRunningFlat with this one change, in the same weathers
 */
public record WhatHelps(String code, String change, Derived chanceOfRunningFlat) {}
