package wayside.server.operation.reference;

import io.swagger.v3.oas.annotations.media.Schema;
import wayside.server.answer.OpenCodes;

/** A table's name and what it is about. */
@Schema(description = "A table's name and what it is about.")
public record ReferenceEntry(
        @Schema(description = "Folder and file, as the address of the table takes it.")
        String name,

        String document,
        String subject,

        @Schema(description = "What stands behind it.") @OpenCodes("basis")
        String basis) {}
