/** Values that say where they come from. Nothing stands below this package. */
package wayside.sizing.trace;
