package wayside.server.answer;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** A document behind steps, or the plain statement that there is none. */
@Schema(name = "Source", description = "A document behind steps, or the plain statement that there is none.")
public record SourceView(
        @Schema(
                description = "The kind of ground: standard, handbook, paper, dataset, definition, common-practice,"
                        + " price-book or given.")
        @OpenCodes("basis")
        String basis,

        @Schema(description = "Publisher, document and edition, or that there is none.")
        String title,

        @Schema(description = "Section, table or equation, when there is one.") @Nullable
        String clause) {}
