/**
 * The operation that says how often a system runs flat on a trip: request, answer, and the way from one to the brief and from the result to the other.
 */
package wayside.server.operation.endurance;
