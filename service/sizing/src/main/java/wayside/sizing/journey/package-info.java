/** A trip made ready once, for all who size or simulate with it: its stays, their sun and air, what a day takes and when. */
package wayside.sizing.journey;
