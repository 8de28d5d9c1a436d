/**
 * Typical years in the open EPW format: hours of sun and air at a place, replayed as they are or taken as monthly means.
 *
 * <p>Source: U.S. Department of Energy, EnergyPlus Auxiliary Programs, chapter on the weather file format.
 */
package wayside.sizing.solar.epw;
