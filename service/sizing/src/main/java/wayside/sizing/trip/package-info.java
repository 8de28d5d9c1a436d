/** A trip made ready for the hourly ledger, and what the ledger's outcome means for whoever takes it. */
package wayside.sizing.trip;
