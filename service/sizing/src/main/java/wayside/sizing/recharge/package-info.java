/** The recharge of a bank that is already built, with all its sources at once. */
package wayside.sizing.recharge;
