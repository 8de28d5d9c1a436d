/** The inverter: how large it must be, and what it costs in energy. */
package wayside.sizing.inverter;
