/**
 * The operation that says conductors and fuses: request, answer, and the way from one to the brief and from the result to the other.
 */
package wayside.server.operation.circuits;
