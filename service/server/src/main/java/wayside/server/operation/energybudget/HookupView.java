package wayside.server.operation.energybudget;

import io.swagger.v3.oas.annotations.media.Schema;

/** What a hookup carries on a usual day. */
@Schema(name = "Hookup", description = "What a hookup carries on a usual day while AC loads run straight off it.")
public record HookupView(
        @Schema(description = "That it gives [W].") Double powerW,

        @Schema(description = "That AC loads take from it [Wh].")
        Double acWh,

        @Schema(
                description =
                        "That the battery need not give for it [Wh]: the same, with the inverter's loss where it would have run.")
        Double relievedWh) {}
