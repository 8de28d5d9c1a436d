/**
 * The operation that says what an array brings, month by month: request, answer, and the way from one to the brief and from the result to the other.
 */
package wayside.server.operation.solaryield;
