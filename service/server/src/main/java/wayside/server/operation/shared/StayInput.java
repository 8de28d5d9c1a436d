package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Null;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.PossibleSky;
import wayside.server.binding.rule.WithYear;

/** A part of the trip spent at one place in one month. */
@Schema(name = "Stay", description = "A part of the trip spent at one place in one month.")
@PossibleSky
public record StayInput(
        @Valid PlaceInput place,

        @Schema(description = "Month of the year.", example = "7") @Min(1) @Max(12)
        Integer month,

        @Schema(description = "How many nights.", example = "4") @Min(1) @Max(Limits.NIGHTS)
        Integer nights,

        @Schema(
                description =
                        "How sunny; the world table answers when left open. Refused beside a typical year, whose sun"
                                + " stands for it.")
        @Valid
        @Null(groups = WithYear.class, message = "nothing: the sun of the typical year stands for it")
        @Nullable
        SkyInput sky,

        @Schema(description = "How warm; the world table answers when left open.") @Valid @Nullable
        AmbientInput ambient,

        @Schema(description = "Engine running [h per day]; 0 when left open.", example = "1")
        @DecimalMin("0")
        @DecimalMax("24")
        @Nullable
        Double drivingHoursPerDay,

        @Schema(description = "Plugged into shore power [h per day]; 0 when left open.", example = "0")
        @DecimalMin("0")
        @DecimalMax("24")
        @Nullable
        Double hookupHoursPerDay) {}
