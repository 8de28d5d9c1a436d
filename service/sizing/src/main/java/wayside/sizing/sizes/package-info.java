/** Sizes that exist: the ladders of the trade, and the next rung at or above what is needed. */
package wayside.sizing.sizes;
