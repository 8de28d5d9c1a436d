/** The yield of an array at a place, month by month, and whether its strings suit the controller. */
package wayside.sizing.yield;
