package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Null;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.OnlyWith;
import wayside.server.binding.rule.UniqueNames;
import wayside.server.binding.rule.WithYear;
import wayside.server.binding.rule.WithoutYear;
import wayside.server.operation.shared.BatteryPlaceInput;
import wayside.server.operation.shared.BuiltSystemInput;
import wayside.server.operation.shared.DaySpreadCode;
import wayside.server.operation.shared.Limits;
import wayside.server.operation.shared.LoadInput;
import wayside.server.operation.shared.TripInput;
import wayside.server.operation.shared.YearReadingCode;

/** Asks whether a system lasts on a trip. */
@Schema(
        description =
                "Asks how often a system runs flat on a trip. A typical year may come with it: its place, its sun and its"
                        + " air then stand for those of every stay, hour by hour. Runs times hours of the trip may be 20 million at most.")
@SimulatedHours(20_000_000)
@OnlyWith(
        value = {"spreadUncertainty", "daySpread"},
        beside = "yearReading",
        is = "means",
        groups = WithYear.class)
public record EnduranceRequest(
        @Valid BuiltSystemInput system,

        @Schema(description = "What runs on the trip.") @Size(min = 1, max = Limits.LOADS) @UniqueNames
        List<@Valid LoadInput> loads,

        @Valid TripInput trip,

        @Schema(description = "State of charge at the first midnight [share]; full when left open.", example = "1")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable
        Double initialStateOfCharge,

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
                                + " changeable or steadier than the table says; 0.27 when left open. Refused beside the hours of a typical year, which are not drawn.",
                example = "0.27")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable
        Double spreadUncertainty,

        @Schema(
                description =
                        "Whose day-to-day spread the drawn days have: the place's own when left open, or as Bendt"
                                + " published it in 1981, which is darker than real days. Refused beside the hours of a typical year.")
        @Nullable
        DaySpreadCode daySpread,

        @Schema(
                description =
                        "What is read from a typical year that comes with the request: its own hours when left open, or its"
                                + " months' means, about which days are then drawn. Refused where none comes.")
        @Null(groups = WithoutYear.class, message = "nothing, or a typical year in a form beside the request")
        @Nullable
        YearReadingCode yearReading,

        @Schema(description = "Where the battery stands; outside when left open.") @Valid @Nullable
        BatteryPlaceInput place,

        @Schema(
                description = "Chance of running flat that is accepted [share], for what the system would carry and for"
                        + " how many nights; 0.05 when left open.",
                example = "0.05")
        @DecimalMin("0.001")
        @DecimalMax("0.9")
        @Nullable
        Double acceptedChance,

        @Schema(
                description =
                        "How many times the trip is simulated, each in a random weather of its own; 2000 when left open.",
                example = "500")
        @Min(50)
        @Max(20_000)
        @Nullable
        Integer runs,

        @Schema(description = "Seed of the random weather; 0 when left open.", example = "0")
        @Min(0)
        @Max(1_000_000_000)
        @Nullable
        Integer seed) {}
