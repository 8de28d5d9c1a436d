package wayside.server.operation.reference;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.OpenCodes;

/** A table with its provenance. */
@Schema(name = "ReferenceTable", description = "A table with its provenance.")
public record ReferenceTableView(
        String name,
        String document,
        @Nullable String edition,
        @Nullable String table,
        @Nullable String subject,
        @Nullable String units,
        @Nullable String conditions,

        @Schema(description = "standard, handbook, paper, dataset or common-practice.") @OpenCodes("basis")
        String basis,

        @Schema(description = "Whether it stands as printed, or how it was derived.") @Nullable
        String standing,

        @Schema(description = "Names with units.") List<String> columns,

        @Schema(description = "Cells as printed; an empty cell is one that the publisher leaves empty.")
        List<List<String>> rows) {}
