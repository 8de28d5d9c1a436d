/**
 * What requests share: loads, trips, places, systems, sizes, each as a record with its rules, and its reader into the brief.
 */
package wayside.server.operation.shared;
