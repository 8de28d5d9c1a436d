package wayside.sizing.charging;

import wayside.sizing.trace.Derived;

/**
 * Something that offers power at the terminals.
 *
 * @param name stable: {@code solar}, {@code alternator}, {@code shore}
 * @param powerW offered as long as the charge lasts [W], 0 or more
 */
public record ChargingSource(String name, Derived powerW) {}
