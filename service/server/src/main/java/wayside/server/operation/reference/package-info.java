/**
 * The tables behind the figures, as they stand.
 */
package wayside.server.operation.reference;
