/** What panels make of the light on them: cells, losses, the power of a day, and the voltage of a string. */
package wayside.sizing.solar.array;
