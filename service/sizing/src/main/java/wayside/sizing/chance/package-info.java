/** The search for a bank and an array whose trip runs flat no more often than is accepted. */
package wayside.sizing.chance;
