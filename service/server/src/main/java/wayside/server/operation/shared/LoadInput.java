package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.AtLeastOneOf;
import wayside.server.binding.rule.AtMostOneOf;
import wayside.server.binding.rule.ExactlyOneOf;
import wayside.server.binding.rule.Named;
import wayside.server.binding.rule.OnlyWith;

/** Something the customer wants to run. */
@Schema(
        name = "Load",
        description = "Something the customer wants to run. Say its power, or its current and the"
                + " voltage of that current; say its hours, or its windows.")
@ExactlyOneOf({"powerW", "currentA"})
@OnlyWith(value = "voltageV", beside = "currentA", needed = true)
@AtLeastOneOf({"hoursPerDay", "windows"})
@AtMostOneOf({"surgeW", "surgeFactor"})
@AtMostOneOf({"dutyCycle", "ambientDuty"})
@ConsistentLoad
public record LoadInput(
        @Schema(description = "As the customer calls it; unique in its list.", example = "fridge")
        @Size(min = 1, max = Limits.NAME_LENGTH)
        String name,

        @Schema(
                description = "Where it is plugged in: the battery's direct current, or the inverter's mains-like"
                        + " alternating current. dc when left open.")
        @Nullable
        SupplyCode supply,

        @Schema(description = "How many of them; 1 when left open.", example = "2")
        @Min(1)
        @Max(Limits.QUANTITY)
        @Nullable
        Integer quantity,

        @Schema(description = "Input power of one while it runs [W]: what it takes, not what it gives.", example = "45")
        @DecimalMin(Limits.LEAST_POWER_W)
        @DecimalMax(Limits.POWER_W)
        @Nullable
        Double powerW,

        @Schema(description = "Current of one while it runs [A], instead of its power.")
        @DecimalMin(Limits.LEAST_CURRENT_A)
        @DecimalMax(Limits.CURRENT_A)
        @Nullable
        Double currentA,

        @Schema(description = "Voltage at which that current was stated [V].")
        @DecimalMin(Limits.LEAST_VOLTAGE_V)
        @DecimalMax(Limits.VOLTAGE_V)
        @Nullable
        Double voltageV,

        @Schema(description = "Hours a day switched on [h]; the length of the windows when left open.", example = "24")
        @DecimalMin("0")
        @DecimalMax("24")
        @Nullable
        Double hoursPerDay,

        @Schema(description = "Share of the hours on in which it really runs; 1 when left open.", example = "0.4")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable
        Double dutyCycle,

        @Schema(description = "When it may be on; any time when left open. Windows of one load do not overlap.")
        @Size(min = 1, max = 24)
        @Nullable
        List<@Valid WindowInput> windows,

        @Schema(description = "Power of one for a moment at its start [W], at least its running power.")
        @DecimalMin(Limits.LEAST_POWER_W)
        @DecimalMax(Limits.POWER_W)
        @Nullable
        Double surgeW,

        @Schema(description = "Surge as a multiple of the running power.", example = "3")
        @DecimalMin("1")
        @DecimalMax("20")
        @Nullable
        Double surgeFactor,

        @Schema(
                description =
                        "How much it matters when the battery runs low. vital: somebody's health or life hangs on it."
                                + " essential: a trip fails when it goes short. comfort: it stops while a quarter of the usable"
                                + " energy is left for the others. essential when left open.")
        @Nullable
        TierCode tier,

        @Schema(description = "Duty against ambient temperature, rising in temperature, instead of a duty cycle.")
        @Size(min = 1, max = 20)
        @Nullable
        List<@Valid DutyPointInput> ambientDuty)
        implements Named {}
