/** Readers of the published tables, and of the trade's own figures, each with its source. */
package wayside.sizing.reference;
