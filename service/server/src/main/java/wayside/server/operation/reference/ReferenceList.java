package wayside.server.operation.reference;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** The tables that the figures rest on. */
@Schema(description = "The tables that the figures rest on.")
public record ReferenceList(List<ReferenceEntry> tables) {}
