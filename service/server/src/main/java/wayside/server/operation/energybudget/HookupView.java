package wayside.server.operation.energybudget;

import io.swagger.v3.oas.annotations.media.Schema;

/** What a hookup carries on a usual day. */
@Schema(name = "Hookup", description = "What a hookup carries on a usual day while AC loads run straight off it.")
public record HookupView(
        @Schema(description = "Power that the hookup gives [W].")
        Double powerW,

        @Schema(description = "Energy that AC loads take from the hookup [Wh].")
        Double acWh,

        @Schema(
                description =
                        "Energy that the battery need not give for it [Wh]: the same, with the inverter's loss where it would have run.")
        Double relievedWh) {}
