/** What a month's light and air are at a place: the world tables, clearness, beam and scatter, and the almanac. */
package wayside.sizing.solar.sky;
