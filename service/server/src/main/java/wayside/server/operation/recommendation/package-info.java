/**
 * The operation that says a whole system for loads and a trip: request, answer, and the way from one to the brief and from the result to the other.
 */
package wayside.server.operation.recommendation;
