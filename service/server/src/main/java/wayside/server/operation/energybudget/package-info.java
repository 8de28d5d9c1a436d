/**
 * The operation that says what a usual day takes out of the battery: request, answer, and the way from one to the brief and from the result to the other.
 */
package wayside.server.operation.energybudget;
