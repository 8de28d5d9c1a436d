package wayside.server.operation.circuits;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.AtMostOneOf;
import wayside.server.binding.rule.ExactlyOneOf;
import wayside.server.binding.rule.Named;
import wayside.server.operation.shared.Limits;
import wayside.server.operation.shared.RuleSetCode;

/** A cable to size. */
@Schema(
        name = "Circuit",
        description =
                "A cable to size. Its length is always one way; the answer says the round trip" + " that it used.")
@ExactlyOneOf({"currentA", "powerW"})
@AtMostOneOf({"prospectiveShortCircuitA", "bank"})
public record CircuitInput(
        @Schema(description = "As the customer calls it; unique in its list.", example = "fridge")
        @Size(min = 1, max = Limits.NAME_LENGTH)
        String name,

        @Schema(description = "What it carries [A].", example = "10")
        @DecimalMin(Limits.LEAST_CURRENT_A)
        @DecimalMax(Limits.CURRENT_A)
        @Nullable
        Double currentA,

        @Schema(
                description =
                        "What it carries [W], direct current, instead of the current; taken with the battery nearly empty.")
        @DecimalMin(Limits.LEAST_POWER_W)
        @DecimalMax(Limits.POWER_W)
        @Nullable
        Double powerW,

        @Schema(description = "Whether it carries that for three hours or more; true when left open.") @Nullable
        Boolean continuous,

        @Schema(description = "One way, from the source to the load [m].", example = "4")
        @DecimalMin(Limits.LEAST_LENGTH_M)
        @DecimalMax(Limits.LENGTH_M)
        Double lengthM,

        @Schema(description = "Nominal, direct current, extra-low voltage only [V]; 12 when left open.", example = "12")
        @DecimalMin("1")
        @DecimalMax("60")
        @Nullable
        Double voltageV,

        @Schema(
                description =
                        "Limit of the voltage drop, both ways, of the nominal voltage [%]; 3 when left open. 10 is the class of lights and other simple loads.",
                example = "3")
        @DecimalMin("0.1")
        @DecimalMax("50")
        @Nullable
        Double voltageDropLimitPercent,

        @Schema(
                description = "Temperature class printed on the cable [C]; 105 (abyc-e11) or 75 (nec) when left open.",
                example = "105")
        @DecimalMin("60")
        @DecimalMax("250")
        @Nullable
        Double insulationC,

        @Schema(description = "Around the cable [C]; 30 when left open, 50 or more in an engine space.", example = "30")
        @DecimalMin(Limits.TEMPERATURE_LOW_C)
        @DecimalMax("150")
        @Nullable
        Double ambientC,

        @Schema(
                description = "Current-carrying conductors that run together, this pair included; 2 when left open.",
                example = "2")
        @Min(1)
        @Max(100)
        @Nullable
        Integer bundledConductors,

        @Schema(description = "Whether it runs through the engine space; false when left open.") @Nullable
        Boolean engineSpace,

        @Schema(description = "Rule set; abyc-e11 when left open.") @Nullable
        RuleSetCode rules,

        @Schema(description = "Current of a short circuit at the fuse [A], where it is known.")
        @DecimalMin(Limits.LEAST_CURRENT_A)
        @DecimalMax("1000000")
        @Nullable
        Double prospectiveShortCircuitA,

        @Schema(
                description = "The bank, for a circuit that comes straight from it. A branch behind a main fuse leaves"
                        + " this open.")
        @Valid
        @Nullable
        BankInput bank)
        implements Named {}
