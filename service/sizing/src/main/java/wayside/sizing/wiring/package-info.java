/**
 * Conductors and fuses of direct-current circuits, and the voltage window of a string of solar modules.
 *
 * <p>Rule sets are tables behind {@link wayside.sizing.wiring.RuleSet}; {@link wayside.sizing.wiring.RuleSets} knows
 * them by code.
 */
package wayside.sizing.wiring;
