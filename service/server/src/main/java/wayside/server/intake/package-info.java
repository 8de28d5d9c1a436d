/**
 * Between the network and the handlers: bodies come in and answers go out without a thread that waits, within a time and a
 * share of memory; what is to be worked on stands in a queue that is fair to each client.
 */
package wayside.server.intake;
