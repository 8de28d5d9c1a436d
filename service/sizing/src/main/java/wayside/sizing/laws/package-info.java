/** What must hold between the parts of any system: each law with its figures, its margin and what would mend it. */
package wayside.sizing.laws;
