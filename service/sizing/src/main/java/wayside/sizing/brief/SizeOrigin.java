package wayside.sizing.brief;

import java.util.Optional;

/**
 * Where a size stands: an entry of the request, or a row of a table.
 *
 * @param given the entry; empty when it is a row
 * @param table its name; empty when it was given
 * @param row its key; empty when it was given
 */
public record SizeOrigin(Optional<At> given, String table, String row) {
    public static SizeOrigin given(At at) {
        return new SizeOrigin(Optional.of(at), "", "");
    }

    public static SizeOrigin row(String table, String row) {
        return new SizeOrigin(Optional.empty(), table, row);
    }
}
