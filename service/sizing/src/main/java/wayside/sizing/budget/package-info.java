/** The energy budget: what the loads take out of the battery on a usual day, inverter and standby included. */
package wayside.sizing.budget;
