package wayside.sizing.trace;

/**
 * A value read from a table of the reference folder.
 *
 * @param table name of the table: {@code nfpa70-2023/chapter-9-table-8}
 * @param row the row's key: {@code 6 AWG}
 */
public record LookedUp(String label, Quantity quantity, String table, String row, Source source) implements Derived {}
