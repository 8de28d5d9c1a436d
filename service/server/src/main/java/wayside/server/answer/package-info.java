/**
 * What all answers share: figures that are placed and traced, messages as code and words, assumptions, cautions, shortfalls, laws
 * and the derivation; and a list of an answer as a table.
 */
package wayside.server.answer;
