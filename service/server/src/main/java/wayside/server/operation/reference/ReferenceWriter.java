package wayside.server.operation.reference;

import java.util.List;
import java.util.Optional;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;

/** The published tables, as they stand. */
public final class ReferenceWriter {
    private ReferenceWriter() {}

    public static ReferenceList list() {
        return new ReferenceList(ReferenceTables.names().stream()
                .map(ReferenceTables::table)
                .map(table -> new ReferenceEntry(
                        table.name(),
                        table.source().title(),
                        table.header().getOrDefault("subject", table.name()),
                        table.source().basis().code()))
                .toList());
    }

    public static Optional<ReferenceTableView> find(String name) {
        return ReferenceTables.find(name).map(ReferenceWriter::table);
    }

    private static ReferenceTableView table(ReferenceTable table) {
        List<List<String>> rows = table.rows().stream()
                .map(row -> table.columns().stream().map(row::text).toList())
                .toList();
        return new ReferenceTableView(
                table.name(),
                table.require("document"),
                table.header().get("edition"),
                table.header().get("table"),
                table.header().get("subject"),
                table.header().get("units"),
                table.header().get("conditions"),
                table.source().basis().code(),
                table.header().get("standing"),
                table.columns(),
                rows);
    }
}
