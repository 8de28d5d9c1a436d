/** From the load list to energy and power, hour by hour, at the loads' own plugs. */
package wayside.sizing.demand;
