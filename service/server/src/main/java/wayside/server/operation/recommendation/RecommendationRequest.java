package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.OnlyWith;
import wayside.server.binding.rule.UniqueNames;
import wayside.server.operation.shared.BatteryPlaceInput;
import wayside.server.operation.shared.DaySpreadCode;
import wayside.server.operation.shared.Limits;
import wayside.server.operation.shared.LoadInput;
import wayside.server.operation.shared.SystemWishesInput;
import wayside.server.operation.shared.TargetInput;
import wayside.server.operation.shared.TripInput;

/** Asks for a whole system. */
@Schema(
        description =
                "Asks for a system that carries the loads on the trip. Runs, seed and what the drawn weather is like"
                        + " go with a chance of running flat.")
@OnlyWith(
        value = {"runs", "seed", "skyUncertainty", "spreadUncertainty", "daySpread"},
        beside = "target/chanceOfRunningFlat")
public record RecommendationRequest(
        @Schema(description = "What the customer wants to run.") @Size(min = 1, max = Limits.LOADS) @UniqueNames
        List<@Valid LoadInput> loads,

        @Valid TripInput trip,

        @Valid @Nullable SystemWishesInput system,

        @Valid @Nullable TargetInput target,

        @Schema(
                description =
                        "Where the battery stands. Left open it stands outside, or in the living space where a chance is accepted"
                                + " and frost would keep charge out of it.")
        @Valid
        @Nullable
        BatteryPlaceInput place,

        @Schema(
                description =
                        "How often the trip is lived when a chance is accepted; 2000 when left open, fewer on a long"
                                + " trip.",
                example = "2000")
        @Min(50)
        @Max(5_000)
        @Nullable
        Integer runs,

        @Schema(
                description =
                        "Standard deviation of the factor on the sky of a whole trip [share]: the year's scatter and"
                                + " what is not known of the place; 0.12 with your own irradiation, 0.16 with ours when left open.",
                example = "0.12")
        @DecimalMin("0")
        @DecimalMax("0.5")
        @Nullable
        Double skyUncertainty,

        @Schema(
                description =
                        "Standard deviation of the factor on the spread of the days of a whole trip [share]: how much more"
                                + " changeable or steadier than the table says; 0.27 when left open.",
                example = "0.27")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable
        Double spreadUncertainty,

        @Schema(
                description = "Whose day-to-day spread the drawn days have: the place's own when left open, or as Bendt"
                        + " published it in 1981, which is darker than real days.")
        @Nullable
        DaySpreadCode daySpread,

        @Schema(description = "Seed of the random weather; 0 when left open.", example = "0")
        @Min(0)
        @Max(1_000_000_000)
        @Nullable
        Integer seed) {}
