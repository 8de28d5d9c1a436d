package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.MessageView;

/** Whether one self-contained unit would do, or parts must be wired. */
@Schema(name = "PowerUnit", description = "Whether one self-contained unit would do, or parts must be wired.")
public record PowerUnitView(
        @Schema(description = "What the question asks of it, exactly.")
        UnitNeedView needed,

        @Schema(description = "Absent when none would do.") @Nullable
        BuyableUnitView buyable,

        @Schema(description = "Most that its 12 V outlet gives [A].")
        Double outletCurrentLimitA,

        @Schema(description = "Whether no limit that such units commonly have is passed.")
        Boolean fits,

        @Schema(description = "The limits that are passed, then what to weigh.")
        List<MessageView> reasons) {}
