package wayside.server.answer;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the sentence of a message is filled with. */
@Schema(
        name = "MessageParameter",
        description = "What the sentence of a message is filled with: number, numbers, text or message is there, one of"
                + " them. Numbers are not rounded.")
public record MessageParameterView(
        @Schema(description = "A figure.") @Nullable Double number,

        @Schema(description = "Several figures of one unit.") @Nullable
        List<Double> numbers,

        @Schema(description = "Unit of the figure or figures; 1 for a plain number.") @OpenCodes("unit") @Nullable
        String unit,

        @Schema(description = "A name: of a load or circuit as in the request, of a size.") @Nullable
        String text,

        @Schema(description = "What has a sentence of its own.") @Nullable
        MessageView message) {}
