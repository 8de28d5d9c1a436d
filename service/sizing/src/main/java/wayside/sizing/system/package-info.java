/** A whole system for a trip, from bank and array to cables and fuses, sized around what is asked or already found. */
package wayside.sizing.system;
