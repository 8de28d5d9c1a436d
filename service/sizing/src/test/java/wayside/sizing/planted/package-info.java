/** Violations of the house's rules, planted to see the rules fail. Stands in no layer, which is one of them. */
package wayside.sizing.planted;
