/**
 * What is asked: immutable records that know nothing of how it is answered. Values are within the ranges of the API's
 * contract; the records trust their reader and check only what would make no sense at all.
 */
package wayside.sizing.brief;
