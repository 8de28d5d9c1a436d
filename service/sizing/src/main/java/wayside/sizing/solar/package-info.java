/**
 * The sun: where it stands, how much of it a month brings to a place, and what an array makes of it.
 *
 * <p>Conventions: angles inside a formula are in radians and carry the source's symbol; azimuths run clockwise from north;
 * the hour angle omega is zero at solar noon and negative in the morning; hour h of a day is centred on h + 0.5 solar time.
 * The formulas are plain doubles and allocate nothing, so that the hourly ledger can call them; a figure that reaches an
 * answer comes out of the traced wrappers.
 */
package wayside.sizing.solar;
