/**
 * A trip simulated hour by hour in many runs, each in its own weather.
 *
 * <p>Plain doubles in primitive arrays; nothing is allocated per hour. Each run draws from numbers that only the seed and its own
 * place in the row decide, so that neither the threads nor the size of bank or array change its weather.
 */
package wayside.sizing.ledger;
