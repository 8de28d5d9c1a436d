/**
 * From the bytes of a body to a record: strict JSON, every fault at once, each with its place, what came and what is taken, and
 * the name that was probably meant. The records' own annotations say all there is to know; nothing here knows an operation.
 */
package wayside.server.binding;
