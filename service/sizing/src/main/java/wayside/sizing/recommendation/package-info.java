/** The system that is recommended, judged by its days of autonomy or by its chance of running flat. */
package wayside.sizing.recommendation;
