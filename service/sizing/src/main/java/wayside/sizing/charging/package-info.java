/** What fills the battery besides the sun, and how long it takes. */
package wayside.sizing.charging;
