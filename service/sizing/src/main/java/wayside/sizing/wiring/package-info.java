/**
 * Conductors and fuses of direct-current circuits.
 *
 * <p>Rule sets are tables behind {@link wayside.sizing.wiring.RuleSet}; {@link wayside.sizing.wiring.RuleSets} knows
 * them by code.
 */
package wayside.sizing.wiring;
