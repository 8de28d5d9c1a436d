/** How a system lasts on a trip: what the outcome of its simulation means for whoever takes it. */
package wayside.sizing.endurance;
