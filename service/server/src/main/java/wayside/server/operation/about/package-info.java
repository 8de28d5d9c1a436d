/**
 * What the service says of itself.
 */
package wayside.server.operation.about;
