/**
 * The operation that says how long a battery takes to fill: request, answer, and the way from one to the brief and from the result to the other.
 */
package wayside.server.operation.rechargetime;
