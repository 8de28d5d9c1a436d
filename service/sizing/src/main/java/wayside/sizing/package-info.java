/** The doors of the core: one per operation, each a straight line through the chapters below, and nothing else. */
package wayside.sizing;
