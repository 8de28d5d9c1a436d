package wayside.server.operation.circuits;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;
import wayside.server.operation.shared.ChemistryCode;
import wayside.server.operation.shared.Limits;

/** The bank that a main circuit comes straight from. */
@Schema(
        name = "FeedingBank",
        description = "The bank that this circuit comes straight from, nothing but its fuse between; decides the"
                + " interrupt rating.")
public record BankInput(
        @Schema(description = "Chemistry of the bank.") ChemistryCode chemistry,

        @Schema(description = "Capacity of the whole bank at its own voltage [Ah].", example = "200")
        @DecimalMin(Limits.LEAST_CAPACITY_AH)
        @DecimalMax(Limits.CURRENT_A)
        Double capacityAh,

        @Schema(description = "Cold cranking current of the whole bank, printed on starting batteries [A].")
        @DecimalMin(Limits.LEAST_CURRENT_A)
        @DecimalMax(Limits.CURRENT_A)
        @Nullable
        Double coldCrankingA) {}
