/** How fast the core is. Figures of one machine and one run mean little alone: compare those of the same run. */
package wayside.benchmarks;
