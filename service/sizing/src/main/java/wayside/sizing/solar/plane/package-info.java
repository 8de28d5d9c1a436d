/** Light on the panel: where the sun stands on a day of the calendar, and what of its light meets a tilted plane. */
package wayside.sizing.solar.plane;
